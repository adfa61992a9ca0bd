namespace Evengrist.Packing.Runs;

/// <summary>A packing line as the plan finds it.</summary>
/// <param name="Code">What it is known by.</param>
public sealed record PackingLine(string Code)
{
    /// <summary>From when on it is free, minutes from the start of the plan.</summary>
    public int FreeFrom { get; init; }

    /// <summary>The flour it packed last; null where it stands clean.</summary>
    public string? LastFlour { get; init; }

    /// <summary>People it takes while it runs.</summary>
    public int Crew { get; init; } = 1;
}
