using Evengrist.Packing.Lines;
using Evengrist.Packing.Runs;

namespace Evengrist.Web.Sights.Packing;

/// <summary>A packing line as it was typed.</summary>
public sealed class LineRow
{
    /// <summary>Its code.</summary>
    public string? Code { get; set; }

    /// <summary>People it takes.</summary>
    public string? Crew { get; set; }

    /// <summary>What it makes.</summary>
    public List<RateRow> Makes { get; set => field = [.. (value ?? []).Where(r => r is not null)]; } = [];

    internal static LineRow Of(LineTerms line) => new() { Code = line.Code, Crew = TypedRows.Say(line.Crew), Makes = [.. line.Makes.Select(RateRow.Of)] };
}

/// <summary>A product that a line makes, as it was typed.</summary>
public sealed class RateRow
{
    /// <summary>Code of the product.</summary>
    public string? Product { get; set; }

    /// <summary>How fast, t/h.</summary>
    public string? Rate { get; set; }

    /// <summary>The bin that feeds it; empty for that of its flour.</summary>
    public string? Bin { get; set; }

    internal bool IsEmpty => string.IsNullOrWhiteSpace(Product) && string.IsNullOrWhiteSpace(Rate) && string.IsNullOrWhiteSpace(Bin);

    internal static RateRow Of(LineRate rate) => new() { Product = rate.Product, Rate = TypedRows.Say(rate.TonnesPerHour), Bin = rate.Bin };
}

/// <summary>A rule for changing over as it was typed.</summary>
public sealed class RuleRow
{
    /// <summary>The flour or product before; empty for any.</summary>
    public string? After { get; set; }

    /// <summary>The flour or product after; empty for any.</summary>
    public string? Into { get; set; }

    /// <summary>How long, minutes.</summary>
    public string? Minutes { get; set; }

    /// <summary>Flour run through, tonnes; empty for none.</summary>
    public string? Flush { get; set; }

    /// <summary>Where that flour goes.</summary>
    public string? FlushTo { get; set; }

    /// <summary>Whether it holds the other way round too.</summary>
    public bool EitherWay { get; set; }

    /// <summary>Whether it is a clean-down.</summary>
    public bool CleanDown { get; set; }

    internal static RuleRow Of(ChangeRule rule) => new()
    {
        After = rule.After, Into = rule.Into, Minutes = TypedRows.Say(rule.Minutes), Flush = rule.FlushTonnes > 0 ? TypedRows.Say(rule.FlushTonnes) : "", FlushTo = rule.FlushTo, EitherWay = rule.EitherWay, CleanDown = rule.IsCleanDown,
    };
}

/// <summary>A shift of people as it was typed.</summary>
public sealed class ShiftRow
{
    /// <summary>Names of the days on which it begins.</summary>
    public string[]? Days { get; set; }

    /// <summary>Begin by the mill's clock.</summary>
    public string? From { get; set; }

    /// <summary>End by the mill's clock.</summary>
    public string? Until { get; set; }

    /// <summary>How many people.</summary>
    public string? People { get; set; }

    internal static ShiftRow Of(HallShift shift) => new() { Days = [.. shift.Days.Select(d => d.ToString())], From = shift.From, Until = shift.Until, People = TypedRows.Say(shift.People) };
}

/// <summary>Who may sign a clean-down, as typed.</summary>
public sealed class SignerRow
{
    /// <summary>The person.</summary>
    public string? Name { get; set; }
}
