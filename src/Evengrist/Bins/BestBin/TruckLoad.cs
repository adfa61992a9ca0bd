namespace Evengrist.Bins.BestBin;

/// <summary>A load that is to go into a bin.</summary>
/// <param name="Class">The wheat class.</param>
/// <param name="Tonnes">Mass, t, above 0.</param>
/// <param name="ProteinPercentAt12">Protein as read, per cent at 12 % moisture.</param>
/// <param name="ProteinUncertainty">One standard uncertainty of it, sampling included, same basis; 0 where none is known.</param>
public sealed record TruckLoad(string Class, double Tonnes, double ProteinPercentAt12, double ProteinUncertainty)
{
    /// <summary>Dry matter over mass, 0 to 1; 0.88 where moisture was not read.</summary>
    public double DryShare { get; init; } = 0.88;

    /// <summary>Falling number, s; null where not read.</summary>
    public double? FallingNumber { get; init; }

    /// <summary>Test weight, kg/hL; null where not read.</summary>
    public double? TestWeight { get; init; }

    /// <summary>What is wrong with it, each a sentence; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults() =>
    [
        .. Tonnes > 0 && double.IsFinite(Tonnes) ? Array.Empty<string>() : ["A load is above 0 t."],
        .. ProteinPercentAt12 is >= 0 and <= 30 && ProteinUncertainty is >= 0 and <= 10 ? Array.Empty<string>() : ["Protein lies from 0 to 30 % at 12 % moisture, its uncertainty from 0 to 10."],
        .. DryShare is > 0 and <= 1 ? Array.Empty<string>() : ["Dry matter lies above 0 and up to 1 of the mass."],
        .. FallingNumber is null or (>= 60 and <= 1000) ? Array.Empty<string>() : ["A falling number lies from 60 to 1000 s."],
    ];
}
