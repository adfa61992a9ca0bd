namespace Evengrist.Milling.Reconciling;

/// <summary>A stream of a mill, of a survey or over a weigher.</summary>
/// <param name="Name">What the mill calls it; each once.</param>
public sealed record NetFlow(string Name)
{
    /// <summary>How much of it was measured, all in one unit (t/h, % of the wheat), 0 or more; null where it was not measured.</summary>
    public double? Amount { get; init; }

    /// <summary>One standard uncertainty of <see cref="Amount"/>; needed with it. 0: known exactly.</summary>
    public double? Uncertainty { get; init; }

    /// <summary>What it is made of, by component (ash, protein, water): a component that has no line here is not balanced where this flows.</summary>
    public IReadOnlyDictionary<string, NetShare> Shares { get; init; } = new Dictionary<string, NetShare>();
}

/// <summary>The share of a component in a stream, all of one component on one basis that fits the amounts: dry with dry amounts.</summary>
public sealed record NetShare
{
    /// <summary>As measured, per cent; null where it is sought.</summary>
    public double? Percent { get; init; }

    /// <summary>One standard uncertainty of it, points; needed with it. 0: known exactly.</summary>
    public double? Uncertainty { get; init; }
}

/// <summary>A place where streams meet and part: what flows in flows out.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="In">Names of the streams into it.</param>
/// <param name="Out">Names of the streams out of it.</param>
public sealed record NetNode(string Name, IReadOnlyList<string> In, IReadOnlyList<string> Out);
