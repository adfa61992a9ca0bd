namespace Evengrist.Streams.Surveys;

/// <summary>What a weigher and the laboratory say of a flour over the time of a survey; what is null was not taken.</summary>
/// <param name="Flour">Code of the flour, as the survey's spouts name it.</param>
/// <param name="TonnesPerHour">Over its weigher, t/h, above 0.</param>
/// <param name="UncertaintyShare">One standard uncertainty of that, share of itself, 0 to 0.5.</param>
/// <param name="AshPercent">Ash on the survey's basis, per cent.</param>
/// <param name="ProteinPercent">Protein on the survey's basis, per cent.</param>
public sealed record WeighedFlour(string Flour, double? TonnesPerHour, double UncertaintyShare, double? AshPercent, double? ProteinPercent)
{
    /// <summary>Usual standard uncertainty of a weigher, share of itself [ours].</summary>
    public const double UsualShare = 0.005;

    /// <summary>Whether anything was taken of it.</summary>
    public bool IsTaken => TonnesPerHour is not null || AshPercent is not null || ProteinPercent is not null;
}
