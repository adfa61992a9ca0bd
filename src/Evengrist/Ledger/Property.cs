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
}
