using Evengrist.Milling.OnPaper;
using Evengrist.Milling.Sheet;
using Evengrist.Quantities;

namespace Evengrist.Milling.Learning;

/// <summary>What was measured at one time in a mill and how it was set then, as a person gives it.</summary>
public abstract record TestReadings
{
    /// <summary>How the mill was set then, where it was not as the sheet says.</summary>
    public SheetChange Set { get; init; } = new();

    /// <summary>Streams surveyed: ash and protein on the basis given beside them.</summary>
    public IReadOnlyList<PosedStream> Streams { get; init; } = [];

    /// <summary>Release by passage, per cent.</summary>
    public IReadOnlyDictionary<string, double> Releases { get; init; } = new Dictionary<string, double>();

    /// <summary>Sieve analyses.</summary>
    public IReadOnlyList<SieveReading> Sieves { get; init; } = [];

    /// <summary>What is wrong, each a sentence; empty where nothing is.</summary>
    /// <param name="name">What the test is called.</param>
    /// <param name="sheet">The flow sheet.</param>
    /// <param name="wheat">The wheat then.</param>
    /// <param name="basis">Basis of ash and protein of streams.</param>
    protected IReadOnlyList<string> FaultsOf(string name, FlowSheet sheet, PosedWheat wheat, Basis basis)
    {
        ArgumentNullException.ThrowIfNull(wheat);
        if (Streams.Any(s => s is null) || Sieves.Any(s => s is null) || Set.Cloths.Any(c => c is null) || Set.Outlets.Any(o => o is null))
        {
            return [$"{name}: null in a list. Give what stands there or take it out."];
        }

        string[] own = [.. Set.Faults(sheet), .. wheat.Faults(), .. Sieves.GroupBy(s => (s.Passage, s.ApertureMicrometres)).Where(g => g.Count() > 1).Select(g => FormattableString.Invariant($"{name}: the sieve of {g.Key.ApertureMicrometres:0.#} µm at {g.Key.Passage} stands there {g.Count()} times: give the mean once."))];
        return own.Length > 0 || !basis.IsStated ? own : Made(name, sheet, wheat, basis).Faults();
    }

    /// <summary>The test.</summary>
    /// <param name="name">What it is called.</param>
    /// <param name="sheet">The flow sheet.</param>
    /// <param name="wheat">The wheat then.</param>
    /// <param name="basis">Basis of ash and protein of streams.</param>
    protected MillTest Made(string name, FlowSheet sheet, PosedWheat wheat, Basis basis)
    {
        ArgumentNullException.ThrowIfNull(wheat);
        return new MillTest(name, Set.Apply(sheet), wheat.Of())
        {
            Streams = [.. Streams.Select(s => new StreamReading(s.Product, s.YieldPercent, s.AshPercent * basis.ToDry, s.ProteinPercent * basis.ToDry))],
            Releases = [.. Releases.Select(r => new ReleaseReading(r.Key, r.Value))],
            Sieves = Sieves,
        };
    }
}
