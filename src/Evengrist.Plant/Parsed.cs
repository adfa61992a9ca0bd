namespace Evengrist.Plant;

/// <summary>What came of reading something from outside: a value, or every fault found. Reading never throws for bad content.</summary>
/// <typeparam name="T">What is wanted.</typeparam>
public sealed class Parsed<T>
    where T : class
{
    private readonly T? value;

    internal Parsed(T? value, IReadOnlyList<Fault> faults)
    {
        this.value = value;
        Faults = faults;
    }

    /// <summary>Whether there is a value, and so no fault.</summary>
    public bool Ok => value is not null;

    /// <summary>Every fault found, in the order of the file; empty when there is a value.</summary>
    public IReadOnlyList<Fault> Faults { get; }

    /// <summary>The value.</summary>
    /// <exception cref="InvalidOperationException">There is none: look at <see cref="Faults"/>.</exception>
    public T Value => value ?? throw new InvalidOperationException($"Nothing was parsed: {Faults[0]}");

    /// <summary>The value carried on through a further step of reading.</summary>
    public Parsed<TNext> Then<TNext>(Func<T, Parsed<TNext>> next)
        where TNext : class => value is null ? new Parsed<TNext>(null, Faults) : next(value);
}
