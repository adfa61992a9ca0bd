namespace Evengrist.Packing.NetContent;

/// <summary>Whose rules of net content hold.</summary>
public enum NetRules
{
    /// <summary>Not said.</summary>
    None,

    /// <summary>United States.</summary>
    US,

    /// <summary>European Union.</summary>
    EU,
}
