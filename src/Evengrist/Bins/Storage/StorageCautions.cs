namespace Evengrist.Bins.Storage;

/// <summary>What stands beside advice that could bring a person to a bin, a fan or a fumigant. The program starts, stops and clears nothing.</summary>
public static class StorageCautions
{
    /// <summary>Before anybody goes near or into a bin.</summary>
    public const string Entry = "Nobody enters a bin while grain is drawn, under a bridge of grain or under grain that hangs on the wall, and nobody walks grain down. "
        + "A person knee-deep in flowing grain is caught in about 4 s and covered in about 20 s. Entry goes by the site's permit: equipment locked out, air tested (below 19.5 % oxygen, above 10 % of the lower flammable limit or with toxic gas over its ceiling: ventilate, respirators as the permit says), "
        + "harness and lifeline, an attendant outside who is trained in rescue (29 CFR 1910.272; local code and the site's procedure prevail).";

    /// <summary>Where grain has heated or gas may stand.</summary>
    public const string Gas = "Heating grain uses up oxygen and gives off carbon dioxide: the air of a hot bin is tested before anybody leans in or enters. A reading on this page is no clearance.";

    /// <summary>Where insects were found.</summary>
    public const string Fumigant = "Fumigation is the work of a licensed applicator under the label, a written plan and placards, with gas testing before anybody enters. This program reckons no dose; it keeps the dates and the clearance as that person states them.";

    /// <summary>Where grain is drawn, turned or aerated.</summary>
    public const string Dust = "Drawing, turning and aerating raise dust. Dust at priority places of elevators (floors within 10.7 m of inside legs, enclosed grinding areas, enclosed dryers) is removed at once when it is deeper than 3.2 mm (29 CFR 1910.272). "
        + "Reckoned for a layer that deep over a whole floor, at an assumed 500 kg/m³: about 530 g/m³ if whirled up in a room 3 m high, far above what explodes (grain dust about 40 to 100 g/m³, from memory). "
        + "No leg is run with a belt or bearing alarm; follow the site's dust hazard analysis and local code.";

    /// <summary>What every list of this kind says of itself.</summary>
    public const string Advice = "Advice to look, from rules with the sources named; a bin that is not named has not been cleared by anybody. A named person decides.";

    /// <summary>The cautions that go with reasons, each once.</summary>
    public static IReadOnlyList<string> For(IEnumerable<RiskReason> reasons)
    {
        var kinds = reasons.Where(r => r.Level >= RiskLevel.Look).Select(r => r.Kind).ToHashSet();
        return
        [
            .. kinds.Count > 0 ? [Entry] : Array.Empty<string>(),
            .. kinds.Overlaps([RiskKind.Heating, RiskKind.CarbonDioxide, RiskKind.Life]) ? [Gas] : Array.Empty<string>(),
            .. kinds.Contains(RiskKind.Insects) ? [Fumigant] : Array.Empty<string>(),
            .. kinds.Overlaps([RiskKind.Heating, RiskKind.Life, RiskKind.MoistAir]) ? [Dust] : Array.Empty<string>(),
        ];
    }
}
