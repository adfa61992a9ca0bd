using System.Globalization;
using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Demo;

/// <summary>One station at which facts are recorded: gathers its drafts until the period ends and gives each a key.</summary>
internal sealed class Desk(string source, IReadOnlyList<string> people)
{
    private List<Draft> drafts = [];
    private int keys;

    public string Source => source;

    public bool HasDrafts => drafts.Count > 0;

    public void Open(string code, PlaceKind kind, string name = "", string material = "", string of = "", long? capacityTonnes = null, double core = 0, decimal stirredTonnes = 0) =>
        drafts.Add(new OpenPlace(code, code, kind, name, material)
        {
            Capacity = capacityTonnes is { } tonnes ? Mass.FromTonnes(tonnes) : null, Of = of, CoreShare = core, Stirred = Mass.FromTonnes(stirredTonnes),
        });

    public void Connect(string from, string to) => drafts.Add(new Connect($"{from}>{to}", from, to));

    public Move Move(string from, string to, long grams, Instant at, Instant? until = null)
    {
        var move = new Move(Key(), from, to, Mass.FromGrams(grams), at, until);
        drafts.Add(move);
        return move;
    }

    public Measure Read(string on, Instant at, Property what, decimal value, string unit, Basis basis, string method, string instrument = "", decimal? uncertainty = null)
    {
        var measure = new Measure(Key(), on, at, what, value, unit, basis, method, instrument, uncertainty);
        drafts.Add(measure);
        return measure;
    }

    public void Happened(string on, Instant at, HappeningKind kind, string text = "") => drafts.Add(new Happen(Key(), on, at, kind, text));

    public void Add(Draft draft) => drafts.Add(draft);

    /// <summary>Puts another draft in the stead of one not yet handed over.</summary>
    public void Replace(Draft old, Draft other) => drafts[drafts.FindLastIndex(d => ReferenceEquals(d, old))] = other;

    /// <summary>A key of this station's own for a draft made elsewhere.</summary>
    public string Key() => (++keys).ToString(CultureInfo.InvariantCulture);

    /// <summary>Everything gathered, as one batch; the desk is empty afterwards. People take turns by day.</summary>
    public DemoBatch Close(Instant recorded)
    {
        var batch = new DemoBatch(people[MillCalendar.Wall(recorded).DayOfYear % people.Count], source, recorded, drafts);
        drafts = [];
        return batch;
    }
}
