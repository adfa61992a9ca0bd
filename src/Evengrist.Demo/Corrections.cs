using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Demo;

/// <summary>Weights typed wrong and put right later: the only drafts that must know the numbers which earlier ones got.</summary>
/// <remarks>Facts are numbered in the order of recording, so the numbers are known as long as nothing else was recorded before or between.</remarks>
internal sealed class Corrections
{
    private const int TypedTooMuch = 5_400;
    private static readonly (LocalDate Day, int Ticket)[] Mistyped = [(new(2025, 7, 16), 34), (new(2025, 8, 5), 12)];
    private readonly Dictionary<Draft, FactId> numbers = new(ReferenceEqualityComparer.Instance);
    private readonly List<(string Ticket, List<(Draft Wrong, Draft Right)> Drafts)> pending = [];
    private long count;

    /// <summary>Two digits of a gross weight change places on a ticket or two of the year.</summary>
    public void Consider(LocalDate day, IReadOnlyList<Ticket> tipped, Desk desk)
    {
        foreach (var (_, number) in Mistyped.Where(m => m.Day == day))
        {
            var ticket = tipped[number - 1];
            List<(Draft, Draft)> drafts = [(ticket.Gross with { Value = ticket.Gross.Value + TypedTooMuch }, ticket.Gross)];
            drafts.AddRange(ticket.Moves.Select(m => ((Draft)(m with { Mass = m.Mass + Mass.FromGrams(TypedTooMuch * 1000L) }), (Draft)m)));
            foreach (var (wrong, right) in drafts)
            {
                desk.Replace(right, wrong);
            }

            pending.Add((ticket.Code, drafts));
        }
    }

    /// <summary>Writes the corrections of what has been recorded wrongly before.</summary>
    public void Write(Desk desk)
    {
        foreach (var (ticket, drafts) in pending.Where(p => p.Drafts.All(d => numbers.ContainsKey(d.Wrong))))
        {
            foreach (var (wrong, right) in drafts)
            {
                desk.Add(right with { Key = desk.Key(), Corrects = numbers[wrong], Note = $"gross weight of {ticket} typed with two digits changed about; put right from the printed strip" });
            }
        }

        pending.RemoveAll(p => p.Drafts.All(d => numbers.ContainsKey(d.Wrong)));
    }

    /// <summary>Counts a batch on its way to the records.</summary>
    public DemoBatch Number(DemoBatch batch)
    {
        foreach (var wrong in pending.SelectMany(p => p.Drafts).Select(d => d.Wrong))
        {
            var at = batch.Drafts.ToList().FindIndex(d => ReferenceEquals(d, wrong));
            if (at >= 0)
            {
                numbers[wrong] = new FactId(count + at + 1);
            }
        }

        count += batch.Drafts.Count;
        return batch;
    }
}
