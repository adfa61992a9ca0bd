using System.Text;
using Evengrist.Ledger;
using Evengrist.Plant.Cases;
using Evengrist.Records;
using Evengrist.Records.Packing;
using NodaTime;

namespace Evengrist.Web.Sights.Packing;

/// <summary>A checkweigher's file, sent or pasted: looked at first, then kept as a whole or not at all.</summary>
public sealed class WeighingForm
{
    /// <summary>Most characters of a file that come back into the text field, to be mended and kept.</summary>
    public const int MostShown = 2_000_000;

    /// <summary><c>look</c> or <c>keep</c>.</summary>
    public string? Do { get; set; }

    /// <summary>The text, where no file was chosen.</summary>
    public string? Text { get; set; }

    /// <summary>The file; it goes before the text.</summary>
    public IFormFile? File { get; set; }

    /// <summary>What the file's own headings mean.</summary>
    public string? Called { get; set; }

    /// <summary>Why what is asked about is taken.</summary>
    public string? Reason { get; set; }

    /// <summary>What was read; null where the file cannot be read.</summary>
    public WeighingFile? Read { get; private set; }

    /// <summary>Every fault with its line, and its column where it has one.</summary>
    public IReadOnlyList<string> Faults { get; private set; } = [];

    /// <summary>What is asked about, each with its line.</summary>
    public IReadOnlyList<string> Questions { get; private set; } = [];

    /// <summary>Reads and looks; keeps where asked to.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="by">Who keeps it; null where nobody is named.</param>
    /// <param name="nameless">What is said then.</param>
    /// <param name="now">The present moment.</param>
    /// <returns>Packages that were new and known; null where nothing was kept.</returns>
    public (int Added, int Known)? Act(Mill mill, string? by, string nameless, Instant now)
    {
        using var stream = File is { Length: > 0 } ? File.OpenReadStream() : new MemoryStream(Encoding.UTF8.GetBytes(Text ?? ""));
        return Act(mill, stream, by, nameless, now);
    }

    /// <summary>The same of a stream.</summary>
    public (int Added, int Known)? Act(Mill mill, Stream stream, string? by, string nameless, Instant now)
    {
        ArgumentNullException.ThrowIfNull(mill);
        var (called, fault) = WeighingSpec.ReadCalled(Called);
        if (fault is not null)
        {
            Faults = [fault];
            return null;
        }

        var read = WeighingFile.Read(stream, SpecOf(mill, now) with { Called = called });
        if (!read.Ok)
        {
            Faults = [.. read.Faults.Select(f => $"{f}")];
            return null;
        }

        Read = read.Value;
        Questions = [.. Read.Questions.Select(q => $"Line {q.Line}: {q.Words}")];
        if (Do != "keep" || (Questions.Count > 0 && string.IsNullOrWhiteSpace(Reason)))
        {
            return null;
        }

        if (string.IsNullOrWhiteSpace(by))
        {
            Faults = [nameless];
            return null;
        }

        return WeighedHours.Keep(mill, Read.Hours, by.Trim(), Questions.Count > 0 ? $"{string.Join(" ", Questions)} Answered: {Reason!.Trim()}" : "");
    }

    /// <summary>What a file of this mill is read against.</summary>
    public static WeighingSpec SpecOf(Mill mill, Instant now)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return new(mill.Settings.Zone, now, [.. Products.Newest(mill).Select(p => p.Product)], mill.Ask(view => view.Book.OfKind(PlaceKind.PackingLine).Select(p => p.Code).ToArray()));
    }
}
