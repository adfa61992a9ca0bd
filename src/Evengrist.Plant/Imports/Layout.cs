using Evengrist.Ledger;

namespace Evengrist.Plant.Imports;

/// <summary>The columns each kind of file may have. The documentation and the pages print this table.</summary>
public static class Layout
{
    private static readonly (string Name, Property What)[] Properties =
    [
        ("moisture", Property.Moisture), ("protein", Property.Protein), ("ash", Property.Ash), ("wet gluten", Property.WetGluten),
        ("falling number", Property.FallingNumber), ("test weight", Property.TestWeight), ("don", Property.Don), ("dockage", Property.Dockage),
        ("temperature", Property.Temperature), ("thousand-kernel weight", Property.ThousandKernelWeight), ("foreign material", Property.ForeignMaterial),
        ("shrunken and broken", Property.ShrunkenAndBroken), ("damaged", Property.Damaged),
        ("heat-damaged", Property.HeatDamaged), ("contrasting classes", Property.ContrastingClasses), ("other classes", Property.OtherClasses), ("vitreous", Property.Vitreous),
        ("white club", Property.WhiteClub), ("other soft white", Property.OtherSoftWhite), ("insect-damaged", Property.InsectDamagedKernels), ("stones", Property.Stones),
        ("stones counted", Property.StoneCount), ("glass", Property.Glass), ("animal filth", Property.AnimalFilth), ("castor beans", Property.CastorBeans),
        ("crotalaria seeds", Property.CrotalariaSeeds), ("unknown foreign substances", Property.UnknownForeignSubstances), ("ergot", Property.Ergot), ("smut balls", Property.SmutBalls),
        ("garlic bulblets", Property.GarlicBulblets), ("live weevils", Property.LiveWeevils), ("other live insects", Property.OtherLiveInsects), ("sprouted", Property.Sprouted),
        ("severely sprouted", Property.SeverelySprouted), ("other grains", Property.OtherGrains), ("insect-bored", Property.InsectBored), ("organic extraneous", Property.OrganicExtraneous),
        ("inorganic extraneous", Property.InorganicExtraneous), ("filth", Property.Filth), ("aflatoxins", Property.Aflatoxin), ("ochratoxin a", Property.OchratoxinA),
        ("zearalenone", Property.Zearalenone), ("t-2 and ht-2", Property.T2AndHt2),
    ];

    private static readonly Column[] Readings = Properties.SelectMany(p => Pair(p.Name, p.What)).ToArray();

    /// <summary>The columns of a kind of file, in the usual order.</summary>
    public static IReadOnlyList<Column> Of(ImportKind kind) => kind switch
    {
        ImportKind.Bins => Bins,
        ImportKind.Intake => Intake,
        ImportKind.Readings => OnPlaces,
        ImportKind.Movements => Movements,
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Not a kind of import."),
    };

    private static Column[] Bins { get; } =
    [
        new TextColumn("code", true, "what people call the place; one of its kind in the mill"),
        new TextColumn("kind", true, "one of the kinds of place, such as bin, pit, field, flour bin, customer"),
        new TextColumn("name", false, "a longer name"),
        new TextColumn("material", false, "the wheat class, flour or additive it is meant for"),
        new TextColumn("of", false, "what it belongs to: the farm of a field"),
        new MassColumn("capacity", false, "the most it may hold; empty for no limit"),
        new ShareColumn("core", false, "share of every layer that stands over the outlet; 10 where nothing is said"),
        new MassColumn("stirred", false, "stirred stage of a temper bin or packing line; none where nothing is said"),
        new TextColumn("feeds", false, "codes of the places it is connected to, parted by |"),
    ];

    private static Column[] Intake { get; } =
    [
        new TextColumn("ticket", true, "number of the ticket; becomes the code of the truck"),
        new TimeColumn("at", true, "when the truck was weighed in"),
        new TextColumn("from", true, "code of the field or elevator it came from"),
        new TextColumn("plate", false, "plate of the truck or number of the railcar"),
        new TextColumn("class", false, "wheat class"),
        new MassColumn("gross", true, "weight of the full truck"),
        new MassColumn("tare", true, "weight of the empty truck"),
        new TimeColumn("tipped", false, "when it was tipped; the same as at where nothing is said"),
        new TextColumn("through", false, "codes of pit and legs on the way to the bin, parted by |"),
        new TextColumn("bin", false, "code of the place it was tipped into; empty for a truck not yet tipped"),
        new TextColumn("contract", false, "the contract under which it is settled"),
        new TextColumn("method", false, "how the readings were taken; needed as soon as there is one"),
        new TextColumn("instrument", false, "with which instrument"),
        .. Readings,
    ];

    private static Column[] OnPlaces { get; } =
    [
        new TextColumn("on", true, "code of the place whose content was sampled"),
        new TimeColumn("at", true, "when the sample was taken"),
        new TextColumn("sample", false, "number of the sample; needed when two samples of one place bear the same time"),
        new TextColumn("method", true, "how the readings were taken"),
        new TextColumn("instrument", false, "with which instrument"),
        .. Readings,
        .. Pair("sounded stock", Property.SoundedStock),
    ];

    private static Column[] Movements { get; } =
    [
        new TextColumn("number", false, "the file's own number of the movement; needed when two movements go the same way at the same time"),
        new TextColumn("from", true, "code of the place where it left"),
        new TextColumn("to", true, "code of the place where it went"),
        new MassColumn("mass", true, "how much, as it lay"),
        new TimeColumn("at", true, "when it began"),
        new TimeColumn("until", false, "when it ended, the rate between being even; empty for at once"),
        new TextColumn("opens", false, "pallet, bulk load, rework tote or truck: the place it goes to is new and is opened by this row"),
        new TextColumn("material", false, "what the opened place holds"),
        new TextColumn("note", false, "anything to remember"),
    ];

    private static Column[] Pair(string name, Property what) => [new ReadingColumn(name, what), new ReadingColumn("± " + name, what, IsUncertainty: true)];
}
