namespace Evengrist.Ledger;

/// <summary>What a reading tells. The numbers are stored; a property keeps its number for ever.</summary>
public enum Property
{
    /// <summary>Not a property; the default value is refused.</summary>
    None = 0,

    /// <summary>Moisture, per cent, wet basis.</summary>
    Moisture = 1,

    /// <summary>Protein (5.7 N), per cent on a stated basis.</summary>
    Protein = 2,

    /// <summary>Ash, per cent on a stated basis.</summary>
    Ash = 3,

    /// <summary>Wet gluten, per cent on a stated basis.</summary>
    WetGluten = 4,

    /// <summary>Falling number, seconds.</summary>
    FallingNumber = 5,

    /// <summary>Test weight; the unit names the convention.</summary>
    TestWeight = 6,

    /// <summary>Deoxynivalenol, mg/kg (ppm) on a stated basis.</summary>
    Don = 7,

    /// <summary>Dockage, per cent of the sample as received.</summary>
    Dockage = 8,

    /// <summary>Temperature, °C.</summary>
    Temperature = 9,

    /// <summary>Gross weight of a truck, kg.</summary>
    GrossWeight = 10,

    /// <summary>Tare weight of a truck, kg.</summary>
    TareWeight = 11,

    /// <summary>Thousand-kernel weight, g.</summary>
    ThousandKernelWeight = 12,

    /// <summary>Foreign material, per cent.</summary>
    ForeignMaterial = 13,

    /// <summary>Shrunken and broken kernels, per cent.</summary>
    ShrunkenAndBroken = 14,

    /// <summary>Damaged kernels, per cent.</summary>
    Damaged = 15,

    /// <summary>What a sounding or weigh-out found in a place, t.</summary>
    SoundedStock = 16,

    /// <summary>Heat-damaged kernels, per cent; part of the damaged kernels.</summary>
    HeatDamaged = 17,

    /// <summary>Wheat of contrasting classes, per cent; part of the other classes.</summary>
    ContrastingClasses = 18,

    /// <summary>Wheat of other classes, contrasting ones included, per cent.</summary>
    OtherClasses = 19,

    /// <summary>Hard and vitreous kernels, per cent: of amber colour in durum, dark in red spring.</summary>
    Vitreous = 20,

    /// <summary>White club wheat within soft white, per cent.</summary>
    WhiteClub = 21,

    /// <summary>Soft white wheat other than white club, per cent.</summary>
    OtherSoftWhite = 22,

    /// <summary>Insect-damaged kernels, count in 100 g.</summary>
    InsectDamagedKernels = 23,

    /// <summary>Stones, per cent.</summary>
    Stones = 24,

    /// <summary>Stones, count in 1 kg.</summary>
    StoneCount = 25,

    /// <summary>Pieces of glass, count in 1 kg.</summary>
    Glass = 26,

    /// <summary>Pieces of animal filth, count in 1 kg.</summary>
    AnimalFilth = 27,

    /// <summary>Castor beans, count in 1 kg.</summary>
    CastorBeans = 28,

    /// <summary>Crotalaria seeds, count in 1 kg.</summary>
    CrotalariaSeeds = 29,

    /// <summary>Pieces of unknown foreign substance, count in 1 kg.</summary>
    UnknownForeignSubstances = 30,

    /// <summary>Ergot, per cent.</summary>
    Ergot = 31,

    /// <summary>Smut balls, average count in 250 g.</summary>
    SmutBalls = 32,

    /// <summary>Green garlic bulblets or the like in dry ones, count in 1 kg.</summary>
    GarlicBulblets = 33,

    /// <summary>Live weevils, count in the sample.</summary>
    LiveWeevils = 34,

    /// <summary>Other live insects injurious to stored grain, count in the sample.</summary>
    OtherLiveInsects = 35,

    /// <summary>Sprouted kernels, severely sprouted ones included, per cent.</summary>
    Sprouted = 36,

    /// <summary>Severely sprouted kernels, per cent.</summary>
    SeverelySprouted = 37,

    /// <summary>Edible grains other than wheat, per cent.</summary>
    OtherGrains = 38,

    /// <summary>Insect-bored kernels, per cent.</summary>
    InsectBored = 39,

    /// <summary>Organic extraneous matter, per cent.</summary>
    OrganicExtraneous = 40,

    /// <summary>Inorganic extraneous matter, per cent.</summary>
    InorganicExtraneous = 41,

    /// <summary>Filth, impurities of animal origin, per cent.</summary>
    Filth = 42,

    /// <summary>Aflatoxins, total, µg/kg on a stated basis.</summary>
    Aflatoxin = 43,

    /// <summary>Ochratoxin A, µg/kg on a stated basis.</summary>
    OchratoxinA = 44,

    /// <summary>Zearalenone, µg/kg on a stated basis.</summary>
    Zearalenone = 45,

    /// <summary>T-2 and HT-2 toxins, sum, µg/kg on a stated basis.</summary>
    T2AndHt2 = 46,

    /// <summary>Carbon dioxide in the air of a bin, ppm by volume.</summary>
    CarbonDioxide = 47,

    /// <summary>Relative humidity of the air between the kernels or of the air blown in, per cent.</summary>
    RelativeHumidity = 48,

    /// <summary>Free height from the eave of a bin down to the grain at the wall, m.</summary>
    Ullage = 49,

    /// <summary>Hardness index of single kernels, crushed one by one; no unit.</summary>
    Hardness = 50,
}
