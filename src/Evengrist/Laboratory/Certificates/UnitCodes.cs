namespace Evengrist.Laboratory.Certificates;

/// <summary>Common codes of UN/ECE Recommendation 20 for the units of results. From memory: check before an exchange hangs on one.</summary>
public static class UnitCodes
{
    /// <summary>The code of a unit of readings; empty where none is known here.</summary>
    public static string Of(string unit) => unit switch
    {
        "%" => "P1",
        "s" => "SEC",
        "mg/kg" => "NA",
        "µg/kg" => "J33",
        "°C" => "CEL",
        "kg" => "KGM",
        "t" => "TNE",
        _ => "",
    };
}
