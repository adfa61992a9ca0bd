namespace Evengrist.Laboratory.Conformity;

/// <summary>What the figures of one property, or of a whole lot, advise. A named person decides.</summary>
public abstract record ReleaseAdvice
{
    private ReleaseAdvice()
    {
    }

    /// <summary>The chance reaches the policy and the decision rule accepts.</summary>
    public sealed record Release : ReleaseAdvice;

    /// <summary>So many more results, each on a sample of its own, would reach it if their mean stays where it is.</summary>
    /// <param name="More">How many, at least 1.</param>
    public sealed record Retest(int More) : ReleaseAdvice;

    /// <summary>Nothing within reason reaches it.</summary>
    public sealed record Hold : ReleaseAdvice;

    /// <summary>The advice in words.</summary>
    public string Words => this switch
    {
        Release => "release",
        Retest { More: 1 } => "test once more",
        Retest again => $"test {again.More} more",
        _ => "hold",
    };

    /// <summary>The advice for a lot of several properties: hold before testing more, testing more before release.</summary>
    public static ReleaseAdvice Of(IReadOnlyCollection<ReleaseAdvice> properties)
    {
        ArgumentNullException.ThrowIfNull(properties);
        return properties.Count == 0 || properties.OfType<Hold>().Any() ? new Hold()
            : properties.OfType<Retest>().Select(r => r.More).DefaultIfEmpty(0).Max() is > 0 and var more ? new Retest(more) : new Release();
    }
}
