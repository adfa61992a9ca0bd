using System.Collections.Frozen;

namespace Evengrist.Ledger;

/// <summary>The one table of what every property is read in.</summary>
internal static class PropertyTraits
{
    private static readonly PropertyTrait None = new("none", 0m, 0m);

    private static readonly FrozenDictionary<Property, PropertyTrait> Table = new Dictionary<Property, PropertyTrait>
    {
        [Property.Moisture] = new("moisture", 0m, 60m, "%"),
        [Property.Protein] = new("protein", 0m, 95m, "%") { NeedsBasis = true },
        [Property.Ash] = Percent("ash") with { NeedsBasis = true },
        [Property.WetGluten] = Percent("wet gluten") with { NeedsBasis = true },
        [Property.FallingNumber] = new("falling number", 60m, 1000m, "s"),
        [Property.TestWeight] = new("test weight", 20m, 100m, "kg/hL", "lb/bu", "g/0.5L"),
        [Property.Don] = new("DON", 0m, 1000m, "mg/kg") { NeedsBasis = true },
        [Property.Dockage] = Percent("dockage"),
        [Property.Temperature] = new("temperature", -60m, 200m, "°C"),
        [Property.GrossWeight] = new("gross", 0m, 200_000m, "kg"),
        [Property.TareWeight] = new("tare", 0m, 200_000m, "kg"),
        [Property.ThousandKernelWeight] = new("thousand-kernel weight", 0m, 200m, "g"),
        [Property.ForeignMaterial] = Percent("foreign material"),
        [Property.ShrunkenAndBroken] = Percent("shrunken and broken"),
        [Property.Damaged] = Percent("damaged kernels"),
        [Property.SoundedStock] = new("sounded stock", 0m, 1_000_000m, "t"),
        [Property.HeatDamaged] = Percent("heat-damaged kernels"),
        [Property.ContrastingClasses] = Percent("contrasting classes"),
        [Property.OtherClasses] = Percent("wheat of other classes"),
        [Property.Vitreous] = Percent("vitreous kernels"),
        [Property.WhiteClub] = Percent("white club"),
        [Property.OtherSoftWhite] = Percent("other soft white"),
        [Property.InsectDamagedKernels] = Count("insect-damaged kernels", "/100 g"),
        [Property.Stones] = Percent("stones"),
        [Property.StoneCount] = Count("stones counted", "/kg"),
        [Property.Glass] = Count("glass", "/kg"),
        [Property.AnimalFilth] = Count("animal filth", "/kg"),
        [Property.CastorBeans] = Count("castor beans", "/kg"),
        [Property.CrotalariaSeeds] = Count("crotalaria seeds", "/kg"),
        [Property.UnknownForeignSubstances] = Count("unknown foreign substances", "/kg"),
        [Property.Ergot] = Percent("ergot"),
        [Property.SmutBalls] = new("smut balls", 0m, 100_000m, "/250 g"),
        [Property.GarlicBulblets] = new("garlic bulblets", 0m, 100_000m, "/kg"),
        [Property.LiveWeevils] = Count("live weevils", "/sample"),
        [Property.OtherLiveInsects] = Count("other live insects", "/sample"),
        [Property.Sprouted] = Percent("sprouted kernels"),
        [Property.SeverelySprouted] = Percent("severely sprouted kernels"),
        [Property.OtherGrains] = Percent("other edible grains"),
        [Property.InsectBored] = Percent("insect-bored kernels"),
        [Property.OrganicExtraneous] = Percent("organic extraneous matter"),
        [Property.InorganicExtraneous] = Percent("inorganic extraneous matter"),
        [Property.Filth] = Percent("filth"),
        [Property.Aflatoxin] = Toxin("aflatoxins"),
        [Property.OchratoxinA] = Toxin("ochratoxin A"),
        [Property.Zearalenone] = Toxin("zearalenone"),
        [Property.T2AndHt2] = Toxin("T-2 and HT-2"),
        [Property.CarbonDioxide] = new("carbon dioxide", 0m, 1_000_000m, "ppm"),
        [Property.RelativeHumidity] = Percent("relative humidity"),
        [Property.Ullage] = new("ullage", 0m, 100m, "m"),
        [Property.Hardness] = new("hardness", -50m, 150m, "index"),
    }.ToFrozenDictionary();

    public static PropertyTrait Trait(this Property what) => Table.GetValueOrDefault(what, None);

    private static PropertyTrait Percent(string words) => new(words, 0m, 100m, "%");

    private static PropertyTrait Count(string words, string unit) => new(words, 0m, 100_000m, unit) { IsCount = true };

    private static PropertyTrait Toxin(string words) => new(words, 0m, 1_000_000m, "µg/kg") { NeedsBasis = true };
}
