namespace Evengrist.Plant;

/// <summary>Makes the two outcomes of reading.</summary>
public static class Parsing
{
    /// <summary>A value was read.</summary>
    public static Parsed<T> Got<T>(T value)
        where T : class => new(value, []);

    /// <summary>Nothing was read; at least one fault says why.</summary>
    public static Parsed<T> Failed<T>(params IReadOnlyList<Fault> faults)
        where T : class => faults.Count > 0
            ? new(null, faults)
            : throw new ArgumentException("A failure names at least one fault.", nameof(faults));
}
