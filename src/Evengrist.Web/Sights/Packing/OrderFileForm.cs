using Evengrist.Plant.Cases;
using Evengrist.Records;
using Evengrist.Records.Packing;
using NodaTime;

namespace Evengrist.Web.Sights.Packing;

/// <summary>A file of orders: looked at first, then kept as a whole or not at all.</summary>
public sealed class OrderFileForm
{
    /// <summary>The file, CSV or XLSX.</summary>
    public IFormFile? File { get; set; }

    /// <summary>Or its text.</summary>
    public string? Text { get; set; }

    /// <summary>Every fault with its line.</summary>
    internal IReadOnlyList<string> Faults { get; private set; } = [];

    /// <summary>What should be looked at, with its line.</summary>
    internal IReadOnlyList<string> Warnings { get; private set; } = [];

    /// <summary>Looks at it.</summary>
    /// <returns>The orders; null where there are faults.</returns>
    internal ImportOrders? Look(Mill mill, Instant now)
    {
        if (File is not { Length: > 0 } && string.IsNullOrWhiteSpace(Text))
        {
            Faults = ["Choose a file, or paste its text."];
            return null;
        }

        using var stream = File is { Length: > 0 } ? File.OpenReadStream() : new MemoryStream(System.Text.Encoding.UTF8.GetBytes(Text!));
        return Look(mill, stream, now);
    }

    internal ImportOrders? Look(Mill mill, Stream stream, Instant now)
    {
        var read = OrderTable.Read(stream, mill.Settings.Zone, now);
        if (!read.Ok)
        {
            Faults = [.. read.Faults.Select(f => $"{f}")];
            return null;
        }

        var orders = new ImportOrders(read.Value.Rows);
        Faults = [.. orders.Faults(mill).Select(f => $"Line {f.Line}: {f.Fault}")];
        Warnings = [.. orders.Warnings(mill, now).Select(w => $"Line {w.Line}: {w.Warning}")];
        return Faults.Count == 0 ? orders : null;
    }
}

/// <summary>Orders of a file that were looked at and wait for a person to confirm.</summary>
public sealed class OrderShelf(IClock clock) : PutBy<ImportOrders>(clock);
