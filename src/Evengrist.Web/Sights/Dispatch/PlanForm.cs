using System.Globalization;
using Evengrist.Packing.Dispatch;
using Evengrist.Web.Sights.Bins;
using NodaTime.Text;

namespace Evengrist.Web.Sights.Dispatch;

/// <summary>A load as it is planned, typed.</summary>
public sealed class PlanForm
{
    /// <summary>Its number.</summary>
    public string? Number { get; set; }

    /// <summary>The day, as 2026-01-14.</summary>
    public string? Day { get; set; }

    /// <summary>Code of the consignee.</summary>
    public string? Consignee { get; set; }

    /// <summary>Code or name of the carrier.</summary>
    public string? Carrier { get; set; }

    /// <summary>The trailer or tanker.</summary>
    public string? Trailer { get; set; }

    /// <summary>The driver.</summary>
    public string? Driver { get; set; }

    /// <summary><c>true</c> for a tanker.</summary>
    public string? Tanker { get; set; }

    /// <summary>Order numbers, with commas between.</summary>
    public string? Orders { get; set; }

    /// <summary>Numbers of kept orders that were ticked besides.</summary>
    public string[]? Picked { get; set; }

    /// <summary>What is to go: <c>24 WB, 2 AP</c>.</summary>
    public string? Planned { get; set; }

    /// <summary>The plan of a load, to be changed.</summary>
    internal static PlanForm Of(DispatchLoad load) => new()
    {
        Number = load.Number, Day = LocalDatePattern.Iso.Format(load.Day), Consignee = load.Consignee, Carrier = load.Carrier, Trailer = load.Trailer, Driver = load.Driver, Tanker = load.IsTanker ? "true" : null,
        Orders = string.Join(", ", load.Orders), Planned = string.Join(", ", load.Planned.Select(p => string.Create(CultureInfo.InvariantCulture, $"{p.Pallets} {p.Flour}"))),
    };

    /// <summary>The order numbers, typed and ticked, each once.</summary>
    internal string[] Named => [.. (Orders ?? "").Split([',', ';'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Concat(Picked ?? []).Distinct(StringComparer.OrdinalIgnoreCase)];

    /// <summary>The plan; null with every fault where it cannot be read.</summary>
    internal DispatchLoad? Read(out IReadOnlyList<string> faults)
    {
        var (found, lines) = (new List<string>(), new List<PlannedFlour>());
        var day = TypedDay.Read(Day);
        if (day is null)
        {
            found.Add(TypedDay.None(Day));
        }

        foreach (var line in (Planned ?? "").Split([',', ';', '\n'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            var parts = line.Split(' ', 2, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
            if (parts.Length == 2 && int.TryParse(parts[0], NumberStyles.None, CultureInfo.InvariantCulture, out var count))
            {
                lines.Add(new(parts[1], count));
            }
            else
            {
                found.Add($"“{line}” is no number of pallets with a flour. Write it like 24 WB, with a comma before the next.");
            }
        }

        faults = found;
        return found.Count > 0 ? null : new DispatchLoad(Number?.Trim() ?? "", day!.Value, Consignee?.Trim() ?? "")
        {
            Carrier = Carrier?.Trim() ?? "", Trailer = Trailer?.Trim() ?? "", Driver = Driver?.Trim() ?? "", IsTanker = Tanker == "true",
            Orders = Named, Planned = lines,
        };
    }
}
