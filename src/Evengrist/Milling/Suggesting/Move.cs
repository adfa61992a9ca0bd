using System.Globalization;
using Evengrist.Milling.OnPaper;

namespace Evengrist.Milling.Suggesting;

/// <summary>What a move changes.</summary>
public enum MoveKind
{
    /// <summary>Not said; never given.</summary>
    None = 0,

    /// <summary>A roll gap, µm.</summary>
    Gap = 1,

    /// <summary>Air of a purifier, m/s.</summary>
    Air = 2,

    /// <summary>A cloth, µm.</summary>
    Cloth = 3,

    /// <summary>Flow of wheat to first break, t/h of dry matter.</summary>
    Flow = 4,
}

/// <summary>One thing set otherwise.</summary>
/// <param name="Kind">What is set.</param>
/// <param name="Passage">Code of the passage; of first break for the flow of wheat.</param>
/// <param name="From">As it is, in the unit of its kind.</param>
/// <param name="To">As it would be.</param>
/// <param name="Outlet">Outlet of the passage, for a cloth; else 0.</param>
public sealed record Move(MoveKind Kind, string Passage, double From, double To, int Outlet = 0)
{
    /// <summary>What is turned: moves of one lever are choices of one another.</summary>
    public (MoveKind Kind, string Passage, int Outlet) Lever => (Kind, Passage, Outlet);

    /// <summary>As a factor on what it is.</summary>
    public double Factor => To / From;

    /// <summary>What it counts among sets that do the same: 1, and a fifth of the logarithm of its factor, so that the fewest come first and then the smallest [ours].</summary>
    public double Effort => 1 + (0.2 * Math.Abs(Math.Log(Factor)));

    /// <summary>What to set, as "B1 gap from 500 to 520 µm".</summary>
    public string Words => Kind switch
    {
        MoveKind.Gap => Said($"{Passage} gap from {From:0.#} to {To:0.#} µm"),
        MoveKind.Air => Said($"{Passage} air from {From:0.00} to {To:0.00} m/s"),
        MoveKind.Cloth => Said($"{Passage} cloth of {From:0.#} to one of {To:0.#} µm"),
        _ => Said($"wheat from {From:0.00} to {To:0.00} t/h of dry matter"),
    };

    /// <summary>Moves as settings to be tried.</summary>
    public static SheetChange Change(IReadOnlyList<Move> moves) => new()
    {
        GapMicrometres = Of(moves, MoveKind.Gap), AirMetresPerSecond = Of(moves, MoveKind.Air),
        Cloths = [.. moves.Where(m => m.Kind is MoveKind.Cloth).Select(m => new ClothChange(m.Passage, m.From, m.To))],
    };

    /// <summary>What the flow of wheat is multiplied by.</summary>
    public static double FlowFactor(IReadOnlyList<Move> moves) => moves.FirstOrDefault(m => m.Kind is MoveKind.Flow)?.Factor ?? 1;

    private static Dictionary<string, double> Of(IReadOnlyList<Move> moves, MoveKind kind) => moves.Where(m => m.Kind == kind).ToDictionary(m => m.Passage, m => m.To, StringComparer.Ordinal);

    private static string Said(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
