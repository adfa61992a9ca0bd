using System.Runtime.InteropServices;

namespace Evengrist.Plant.Epcis.Sending;

/// <summary>What somebody has been told and was not told to be wrong: reckoned from all that went to him, in its order.</summary>
internal sealed class SentBefore
{
    private readonly IReadOnlyList<SentEvents> sendings;
    private readonly Dictionary<UInt128, Standing> inForce = [];
    private readonly Dictionary<UInt128, int> declared = [];

    public SentBefore(IReadOnlyList<SentEvents> sendings)
    {
        this.sendings = sendings;
        var keys = new List<List<UInt128>>();
        foreach (var (n, sending) in sendings.Index())
        {
            foreach (var (of, line, _) in sending.DeclaredLines())
            {
                var key = keys[of - 1][line];
                inForce.Remove(key);
                CollectionsMarshal.GetValueRefOrAddDefault(declared, key, out _)++;
            }

            List<UInt128> own = [];
            foreach (var text in sending.Lines())
            {
                var said = text.Said;
                var key = said.Key;
                inForce[key] = new(n + 1, own.Count, said.Moment);
                own.Add(key);
            }

            keys.Add(own);
        }
    }

    /// <summary>Keys of what he was told, as the ledger said it, with where it stands.</summary>
    public IReadOnlyDictionary<UInt128, Standing> InForce => inForce;

    /// <summary>The event as it goes to him: marked where it was declared wrong to him before and holds again.</summary>
    public EventText AsSent(EventText said, UInt128 key) => said.ToldAgain(declared.GetValueOrDefault(key));

    /// <summary>Events he was told, with what they stand under, in the order they were told.</summary>
    public IEnumerable<(Standing Standing, EventText Text)> Told(IReadOnlySet<UInt128> keys)
    {
        var wanted = keys.Select(k => inForce[k]).ToLookup(s => s.Sending);
        foreach (var sending in wanted.OrderBy(w => w.Key))
        {
            var lines = sending.ToDictionary(s => s.Line);
            foreach (var (line, text) in sendings[sending.Key - 1].Lines().Index())
            {
                if (lines.TryGetValue(line, out var standing))
                {
                    yield return (standing, text);
                }
            }
        }
    }
}

/// <summary>Where an event stands that somebody was told.</summary>
/// <param name="Sending">Number of the sending, from 1.</param>
/// <param name="Line">Place among what it told, from 0.</param>
/// <param name="Moment">When it happened, milliseconds of Unix time.</param>
internal readonly record struct Standing(int Sending, int Line, long Moment);
