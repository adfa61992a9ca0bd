using System.Text.Json;
using Evengrist.Ledger;
using NodaTime;
using NodaTime.Text;

namespace Evengrist.Intake.Deciding;

/// <summary>The last loads of a trailer, newest first, and how it was cleaned since, as its driver declares.</summary>
/// <param name="Loads">Newest first, up to <see cref="Most"/>.</param>
/// <param name="Cleaned">How it was cleaned since the newest of them.</param>
/// <param name="By">Who says so.</param>
public sealed record TrailerHistory(IReadOnlyList<PreviousLoad> Loads, CleanOut Cleaned, string By)
{
    /// <summary>How many loads are asked for.</summary>
    public const int Asked = 3;

    /// <summary>How many can be kept.</summary>
    public const int Most = 10;

    /// <summary>Every fault, each a sentence; empty where there is none.</summary>
    public IReadOnlyList<string> Faults()
    {
        var faults = new List<string>();
        if (Loads.Count is 0 or > Most)
        {
            faults.Add($"Give the last loads of the trailer, 1 to {Most}, newest first.");
        }

        if (Loads.Any(l => l.What == CargoKind.None || !Enum.IsDefined(l.What)))
        {
            faults.Add($"A load of the trailer is no sort we know: {string.Join(", ", Enum.GetValues<CargoKind>().Where(k => k != CargoKind.None).Select(k => k.Words()))}.");
        }

        if (!Enum.IsDefined(Cleaned) || Cleaned == CleanOut.Never)
        {
            faults.Add("Say how the trailer was cleaned: not cleaned, swept out, washed and dried, or washed, dried, inspected and signed.");
        }

        if (string.IsNullOrWhiteSpace(By))
        {
            faults.Add("Say who declares it: the driver's name.");
        }

        return faults;
    }

    /// <summary>The text of a declared happening.</summary>
    public string ToText() => Happening.TextOf(
        $"last loads {string.Join(", ", Loads.Select(l => l.What.Words() + (l.On is { } on ? " on " + LocalDatePattern.Iso.Format(on) : "")))}; {Cleaned.Words()}; says {By.Trim()}",
        JsonSerializer.Serialize(new Dictionary<string, object>
        {
            ["loads"] = Loads.Select(l => new Dictionary<string, string> { ["what"] = l.What.ToString(), ["on"] = l.On is { } on ? LocalDatePattern.Iso.Format(on) : "" }),
            ["cleaned"] = Cleaned.ToString(), ["by"] = By.Trim(),
        }));

    /// <summary>What a declared happening tells; null where it tells nothing of a trailer.</summary>
    public static TrailerHistory? Read(Happening happening)
    {
        ArgumentNullException.ThrowIfNull(happening);
        if (ParticularsJson.Read(happening) is not { } said || !said.TryGetProperty("loads", out var loads) || loads.ValueKind != JsonValueKind.Array
            || !Enum.TryParse<CleanOut>(ParticularsJson.Text(said, "cleaned"), out var cleaned))
        {
            return null;
        }

        var history = new TrailerHistory(
            [.. loads.EnumerateArray().Where(l => l.ValueKind == JsonValueKind.Object).Select(LoadOf)], cleaned, ParticularsJson.Text(said, "by"));
        return history.Faults().Count == 0 ? history : null;
    }

    private static PreviousLoad LoadOf(JsonElement load) => new(
        Enum.TryParse<CargoKind>(ParticularsJson.Text(load, "what"), out var what) ? what : CargoKind.None,
        LocalDatePattern.Iso.Parse(ParticularsJson.Text(load, "on")) is { Success: true } on ? on.Value : (LocalDate?)null);
}
