namespace Evengrist.Milling.Sheet;

/// <summary>A pair of rolls as it is set.</summary>
/// <param name="GapMicrometres">Distance between the rolls where they are nearest, µm; 10 to 2000.</param>
/// <param name="LengthMillimetres">Length of roll face the passage has in all, mm; 100 to 50 000.</param>
public sealed record RollPair(double GapMicrometres, double LengthMillimetres)
{
    /// <summary>Flutes for each centimetre round the roll; 0 for smooth rolls, at most 16.</summary>
    public double FlutesPerCentimetre { get; init; }

    /// <summary>How the flutes meet; none for smooth rolls.</summary>
    public Disposition Disposition { get; init; }

    /// <summary>Speed of the fast roll's face over the slow roll's; 1 to 5. About 2.5 on breaks, 1.25 on smooth rolls [read: a roller mill's description].</summary>
    public double Differential { get; init; } = 1.25;

    /// <summary>Speed of the fast roll's face, m/s; 1 to 15. Usually 6 to 8 [memory].</summary>
    public double FastMetresPerSecond { get; init; } = 6;

    /// <summary>Whether the rolls have flutes.</summary>
    public bool IsFluted => FlutesPerCentimetre > 0;

    internal IEnumerable<string> Faults()
    {
        (bool Holds, string Otherwise)[] rules =
        [
            (GapMicrometres is >= 10 and <= 2000, "a roll gap lies from 10 to 2000 µm"),
            (LengthMillimetres is >= 100 and <= 50_000, "the roll length lies from 100 to 50,000 mm"),
            (FlutesPerCentimetre is >= 0 and <= 16, "flutes lie from 0 (smooth) to 16 for each centimetre"),
            (Differential is >= 1 and <= 5, "the differential lies from 1 to 5"),
            (FastMetresPerSecond is >= 1 and <= 15, "the fast roll's speed lies from 1 to 15 m/s"),
            (IsFluted == Disposition is not Disposition.None, "fluted rolls have a disposition and smooth rolls have none"),
        ];
        return rules.Where(r => !r.Holds).Select(r => r.Otherwise);
    }
}
