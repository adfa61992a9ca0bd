using Evengrist.Milling.Learning;
using Evengrist.Milling.OnPaper;
using Evengrist.Milling.Sheet;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Plant.Cases;

/// <summary>A test of a mill, posed.</summary>
/// <param name="Name">What it is called.</param>
public sealed record PosedMillTest(string Name)
{
    /// <summary>When it was taken; drift needs it.</summary>
    public Instant? At { get; init; }

    /// <summary>How the mill was set then, where it was not as the sheet says.</summary>
    public SheetChange Set { get; init; } = new();

    /// <summary>The wheat then; the case's where left out.</summary>
    public PosedWheat? Wheat { get; init; }

    /// <summary>Streams surveyed: ash and protein on the case's basis.</summary>
    public IReadOnlyList<PosedStream> Streams { get; init; } = [];

    /// <summary>Release by passage, per cent.</summary>
    public IReadOnlyDictionary<string, double> Releases { get; init; } = new Dictionary<string, double>();

    /// <summary>Sieve analyses.</summary>
    public IReadOnlyList<SieveReading> Sieves { get; init; } = [];

    internal IReadOnlyList<string> Faults(FlowSheet sheet, PosedWheat wheat, Basis basis)
    {
        string[] own = [.. Set.Faults(sheet), .. (Wheat ?? wheat).Faults(), .. Streams.Any(s => s is null) || Sieves.Any(s => s is null) ? [$"{Name}: null in a list. Give what stands there or take it out."] : Array.Empty<string>()];
        return own.Length > 0 || !basis.IsStated ? own : Of(sheet, wheat, basis).Faults();
    }

    internal MillTest Of(FlowSheet sheet, PosedWheat wheat, Basis basis) => new(Name, Set.Apply(sheet), (Wheat ?? wheat).Of())
    {
        Streams = [.. Streams.Select(s => new StreamReading(s.Product, s.YieldPercent, s.AshPercent * basis.ToDry, s.ProteinPercent * basis.ToDry))],
        Releases = [.. Releases.Select(r => new ReleaseReading(r.Key, r.Value))],
        Sieves = Sieves,
    };
}

/// <summary>A stream of a survey, posed.</summary>
/// <param name="Product">Code on the flow sheet.</param>
/// <param name="YieldPercent">Share of the wheat to first break as both flow, per cent.</param>
public sealed record PosedStream(string Product, double YieldPercent)
{
    /// <summary>Ash, per cent on the case's basis; null where it was not read.</summary>
    public double? AshPercent { get; init; }

    /// <summary>Protein, per cent on the case's basis; null where it was not read.</summary>
    public double? ProteinPercent { get; init; }
}
