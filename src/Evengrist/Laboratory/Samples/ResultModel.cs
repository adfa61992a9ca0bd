using System.Globalization;
using Evengrist.Laboratory.Methods;
using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Laboratory.Samples;

/// <summary>Whether results can be taken: what cannot be is refused; what is odd, or comes from an instrument that is out of check, is asked about. See docs/model/samples.md.</summary>
/// <param name="methods">The laboratory's methods.</param>
/// <param name="standings">How its instruments stand when the results were made.</param>
public sealed class ResultModel(LabMethods methods, IReadOnlyList<InstrumentStanding> standings)
{
    /// <summary>How many of the last values a result is held against [ours].</summary>
    public const int LastCount = 5;

    /// <summary>Everything against an entry; empty where nothing is.</summary>
    /// <param name="entry">The results.</param>
    /// <param name="sampled">When the sample was taken.</param>
    /// <param name="measured">When it was measured.</param>
    /// <param name="last">Last readings of the same place, property and method before the sample.</param>
    public IReadOnlyList<Objection> Against(ResultEntry entry, Instant sampled, Instant measured, IReadOnlyList<Reading> last)
    {
        ArgumentNullException.ThrowIfNull(entry);
        var objections = new List<Objection>();
        void Refuse(string? words) => objections.AddRange(words is null ? [] : [new Objection(words, false)]);
        var (name, what) = (entry.What.Words(), Capital(entry.What.Words()));
        if (measured < sampled)
        {
            Refuse($"{what}: measured on {measured}, before the sample was taken on {sampled}. Is the date right, and the sample?");
        }

        if (entry.Values.Count == 0)
        {
            Refuse($"{what}: there is no value.");
        }

        var method = methods.Of(entry.Method, entry.What);
        Refuse(string.IsNullOrWhiteSpace(entry.Method) ? $"{what}: say by which method; a result without one says nothing."
            : method is null ? $"{what}: there is no method \"{entry.Method}\" for it in the table. Add it there first, or look for a typing error." : null);
        foreach (var fault in entry.Values.Select(v => Readings.Fault(entry.What, v, entry.Unit, entry.Basis)).OfType<string>().Distinct())
        {
            Refuse(fault);
        }

        objections.AddRange(AgainstInstrument(entry, name));
        if (objections.All(o => o.IsQuestion) && method?.OddBeyond is { } beyond && Usual(last, entry) is { } usual)
        {
            objections.AddRange(entry.Values.Where(v => Math.Abs(v - usual) > beyond).Select(v => new Objection(string.Create(CultureInfo.InvariantCulture,
                $"{what} of {v} {entry.Unit} is unlike the last ones here, about {usual:0.###} {entry.Unit}: more than {beyond} away. Is it the right sample, and the right field?"), true)));
        }

        return objections;
    }

    /// <summary>The median of the last readings in the unit and on the basis of an entry; null where there is none.</summary>
    public static decimal? Usual(IReadOnlyList<Reading> last, ResultEntry entry)
    {
        ArgumentNullException.ThrowIfNull(last);
        ArgumentNullException.ThrowIfNull(entry);
        decimal[] values = [.. last.Where(r => r.Unit == entry.Unit && r.Basis.IsStated == entry.Basis.IsStated).OrderByDescending(r => r.At).Take(LastCount)
            .Select(r => entry.Basis.IsStated ? r.Basis.Restated(r.Value, entry.Basis) : r.Value).Order()];
        return values.Length == 0 ? null : (values[(values.Length - 1) / 2] + values[values.Length / 2]) / 2;
    }

    private IEnumerable<Objection> AgainstInstrument(ResultEntry entry, string name)
    {
        var (what, instrument) = (Capital(name), entry.Instrument.Trim());
        var serving = standings.Where(s => s.Instrument.Serves(entry.Method)).ToArray();
        if (instrument.Length == 0)
        {
            return serving.Length == 0 ? [] : [new($"{what}: say on which instrument: {string.Join(" or ", serving.Select(s => s.Instrument.Code))}.", false)];
        }

        return standings.FirstOrDefault(s => s.Instrument.Code.Equals(instrument, StringComparison.OrdinalIgnoreCase)) is not { } standing
            ? standings.Count == 0 ? [] : [new($"{what}: there is no instrument \"{instrument}\" in the table. Add it there first, or look for a typing error.", false)]
            : !string.IsNullOrWhiteSpace(entry.Method) && !standing.Instrument.Serves(entry.Method) ? [new($"{what}: {standing.Instrument.Code} does not serve {entry.Method}; it serves {string.Join(", ", standing.Instrument.Methods)}.", false)]
            : standing.NeedsReason ? [new($"{standing.Instrument.Code} is {standing.Doubt}: {standing.Why} A result by it is taken only with a reason.", true)]
            : [];
    }

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];
}
