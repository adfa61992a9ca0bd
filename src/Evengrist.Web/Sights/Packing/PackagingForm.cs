using Evengrist.Packing.Lines;
using Evengrist.Records;
using Evengrist.Records.Packing;
using NodaTime;

namespace Evengrist.Web.Sights.Packing;

/// <summary>Packaging that was loaded or came off a line, as typed.</summary>
public sealed class PackagingForm
{
    /// <summary><c>load</c> or <c>off</c>.</summary>
    public string? Do { get; set; }

    /// <summary>What it is.</summary>
    public string? Kind { get; set; }

    /// <summary>The supplier's lot.</summary>
    public string? Lot { get; set; }

    /// <summary>The supplier.</summary>
    public string? Supplier { get; set; }

    /// <summary>Code of the line.</summary>
    public string? Line { get; set; }

    /// <summary>When.</summary>
    public string? At { get; set; }

    /// <summary>The version printed.</summary>
    public string? Label { get; set; }

    /// <summary>Records it; every fault where it cannot be, and then nothing is recorded.</summary>
    internal IReadOnlyList<string> Act(Mill mill, string? by, Func<string?, Instant?> read)
    {
        if (read(At) is not { } at)
        {
            return [$"“{At}” is no day and time."];
        }

        if (Do == "off")
        {
            return string.IsNullOrWhiteSpace(by) ? [Visiting.Visit.Nameless] : PackagingUses.TakeOff(mill, Line ?? "", Lot ?? "", at, by) is null ? [$"The lot {Lot?.Trim()} was not on {Line} before then."] : [];
        }

        var kind = Enum.TryParse<PackagingKind>(Kind, out var named) && named.ToString() == Kind ? named : PackagingKind.Bags;
        return PackagingUses.Load(mill, new PackagingUse(kind, (Lot ?? "").Trim(), (Supplier ?? "").Trim(), (Line ?? "").Trim(), "", at, null, (Label ?? "").Trim()), by).Faults;
    }
}
