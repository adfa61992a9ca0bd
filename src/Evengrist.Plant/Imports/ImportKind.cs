namespace Evengrist.Plant.Imports;

/// <summary>What a file brings in.</summary>
public enum ImportKind
{
    /// <summary>Places of the mill and what is connected to what.</summary>
    Bins,

    /// <summary>Tickets of trucks and railcars, with their weights and readings.</summary>
    Intake,

    /// <summary>Readings on any place.</summary>
    Readings,

    /// <summary>Movements between places.</summary>
    Movements,
}
