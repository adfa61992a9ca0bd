namespace Evengrist.Web.Sights;

/// <summary>The states a person may say of a bin, in plain words.</summary>
public static class BinStates
{
    /// <summary>Somebody is in the bin.</summary>
    public const string PersonInside = "person inside";

    /// <summary>Fumigant is in the bin.</summary>
    public const string UnderGas = "under gas";

    /// <summary>All of them.</summary>
    public static IReadOnlyList<string> All { get; } = ["open", "resting", "shut", UnderGas, PersonInside];

    /// <summary>Whether a state keeps everybody from drawing.</summary>
    public static bool Stops(string state) =>
        state.StartsWith(PersonInside, StringComparison.OrdinalIgnoreCase) || state.StartsWith(UnderGas, StringComparison.OrdinalIgnoreCase);
}
