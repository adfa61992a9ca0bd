namespace Evengrist.Season;

/// <summary>One wheat of the plan: what can be drawn as one thing, in one bin or in none.</summary>
/// <param name="Code">Its own code among wheats and offers; the code of its bin where it has the bin alone.</param>
/// <param name="WheatClass">Its class: HW, HS, SW …, the mill's own words.</param>
/// <param name="OpeningTonnes">What lies there at the start, t as it lies, 0 or more.</param>
/// <param name="MoisturePercent">Moisture, per cent, wet basis.</param>
/// <param name="Quality">Mean quality of what lies there or is to come.</param>
public sealed record SeasonWheat(string Code, string WheatClass, double OpeningTonnes, double MoisturePercent, SeasonQuality Quality)
{
    /// <summary>Code of the <see cref="SeasonHome"/> it lies in; empty where no bin bounds it.</summary>
    public string Home { get; init; } = "";

    /// <summary>Layers of the opening stock in the order in which they leave; empty for one layer of the mean quality. Their tonnes make up the opening.</summary>
    public IReadOnlyList<SeasonLayer> Layers { get; init; } = [];

    /// <summary>What is expected to arrive.</summary>
    public IReadOnlyList<SeasonDelivery> Deliveries { get; init; } = [];

    /// <summary>Points of extraction it gives more than a flour's yield, below 0 for less: −1.5 for thin kernels.</summary>
    public double ExtractionPoints { get; init; }

    /// <summary>Its own yield of single flours, t of flour for a t of wheat, by code of the flour; it stands in for yield and points.</summary>
    public IReadOnlyDictionary<string, double> YieldOf { get; init; } = new Dictionary<string, double>();

    /// <summary>What a tonne left at the end of the plan is worth, money per t.</summary>
    public double EndValuePerTonne { get; init; }
}
