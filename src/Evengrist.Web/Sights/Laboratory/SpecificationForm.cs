using Evengrist.Laboratory.Conformity;
using Evengrist.Laboratory.Specifications;
using Evengrist.Records;
using Evengrist.Records.Laboratory;
using Evengrist.Web.Sights.Bins;
using NodaTime;
using NodaTime.Text;

namespace Evengrist.Web.Sights.Laboratory;

/// <summary>A specification as it was typed, line by line.</summary>
public sealed class SpecificationForm
{
    /// <summary>What is done with it: <see cref="KeepIt"/> or <see cref="ChangeLines"/>.</summary>
    internal const string KeepIt = "keep", ChangeLines = "lines";

    private const int MostRows = 40;

    /// <summary>What is done.</summary>
    public string? Do { get; set; }

    /// <summary>The version it follows; 0 for a new one.</summary>
    public string? Seen { get; set; }

    /// <summary>Its code.</summary>
    public string? Code { get; set; }

    /// <summary>The flour.</summary>
    public string? Flour { get; set; }

    /// <summary>The flour in words.</summary>
    public string? Name { get; set; }

    /// <summary>The customer; empty for the mill's own.</summary>
    public string? Customer { get; set; }

    /// <summary>The market whose legal rules hold beside it.</summary>
    public string? Market { get; set; }

    /// <summary>From when on it holds.</summary>
    public string? ValidFrom { get; set; }

    /// <summary>What else is agreed.</summary>
    public string? Remark { get; set; }

    /// <summary>Its lines.</summary>
    public List<SpecificationRow> Rows { get; set => field = value ?? []; } = [];

    /// <summary>One to begin with: what is kept, or an empty line.</summary>
    internal static SpecificationForm Of(KeptSpecification? kept) => kept is not { Specification: var s } ? new() { Seen = "0", Rows = [Fresh()] } : new()
    {
        Seen = kept.Version.ToString(System.Globalization.CultureInfo.InvariantCulture), Code = s.Code, Flour = s.Flour, Name = s.Name, Customer = s.Customer, Market = s.Market,
        ValidFrom = s.ValidFrom is { } from ? LocalDatePattern.Iso.Format(from) : "", Remark = s.Remark, Rows = [.. s.Items.Select(SpecificationRow.Of)],
    };

    /// <summary>Takes out the lines ticked so and adds an empty one.</summary>
    internal void Change()
    {
        Rows.RemoveAll(r => r.Out);
        if (Rows.Count < MostRows)
        {
            Rows.Add(Fresh());
        }
    }

    /// <summary>Keeps it as the next version; every fault where it cannot be, and then nothing is kept.</summary>
    internal (KeptSpecification? Kept, IReadOnlyList<string> Faults) Keep(Mill mill, string? by)
    {
        List<string> faults = [.. string.IsNullOrWhiteSpace(by) ? [Visiting.Visit.Nameless] : Array.Empty<string>()];
        LocalDate? from = null;
        if (!string.IsNullOrWhiteSpace(ValidFrom))
        {
            from = TypedDay.Read(ValidFrom);
            faults.AddRange(from is null ? [$"Holds from: {TypedDay.None(ValidFrom)}"] : Array.Empty<string>());
        }

        SpecificationItem[] items = [.. Rows.Index().Where(r => !r.Item.Out && !r.Item.IsEmpty).Select(r => r.Item.Read(r.Index + 1, faults)).OfType<SpecificationItem>()];
        if (faults.Count > 0)
        {
            return (null, faults);
        }

        return FlourSpecifications.Keep(mill, new Specification((Code ?? "").Trim(), (Flour ?? "").Trim(), items)
        {
            Name = (Name ?? "").Trim(), Customer = (Customer ?? "").Trim(), Market = (Market ?? "").Trim(), ValidFrom = from, Remark = (Remark ?? "").Trim(),
        }, by!, int.TryParse(Seen, out var seen) ? seen : null);
    }

    private static SpecificationRow Fresh() => new() { Rule = nameof(ResultRule.MeanOf), Needed = "1", Decision = nameof(DecisionRule.Simple), Source = "the mill's own sheet" };
}
