using System.Globalization;
using System.Net.Http.Json;
using System.Text.Json;
using NodaTime;
using NodaTime.Text;

namespace Evengrist.Edge.Tests.Web.Trucks;

/// <summary>A scale house that takes trucks in over HTTP, step by step. What it sends it may send again, as a station does whose answer was lost.</summary>
internal sealed class Station(HttpClient client, string name, Func<int> repeats)
{
    private readonly List<double> milliseconds = [];

    /// <summary>How long each request took until its answer was read, in milliseconds.</summary>
    public IReadOnlyList<double> Milliseconds => milliseconds;

    /// <summary>Takes a truck from the gate to the bin; the number it was given.</summary>
    /// <param name="truck">The truck.</param>
    /// <param name="key">This station's own key of it.</param>
    /// <param name="day">Days by which everything is moved, so that the same trucks may come on another day.</param>
    public async Task<string> TakeAsync(HarvestTruck truck, string key, Duration day = default)
    {
        string At(int minutes) => InstantPattern.General.Format(truck.At + day + Duration.FromMinutes(minutes));
        var ticket = await PostAsync("arrivals", new()
        {
            ["station"] = name, ["key"] = key, ["at"] = At(-4), ["plate"] = truck.Plate, ["source"] = truck.Source, ["class"] = truck.Class, ["contract"] = truck.Contract,
        });
        foreach (var (step, minutes, body) in Steps(truck, key))
        {
            body["at"] = At(minutes);
            body["seen"] = ticket.GetProperty("newest").GetInt64().ToString(CultureInfo.InvariantCulture);
            ticket = await PostAsync($"tickets/{ticket.GetProperty("ticket").GetString()}/{step}", body);
        }

        return ticket.GetProperty("ticket").GetString()!;
    }

    private static IEnumerable<(string Step, int Minutes, Dictionary<string, string> Body)> Steps(HarvestTruck truck, string key) =>
    [
        ("weigh-in", 0, new() { ["gross"] = truck.Gross.Kilograms.ToString(CultureInfo.InvariantCulture) }),
        ("sample", 4, new(truck.Sample) { ["key"] = key }),
        ("send", 6, new() { ["decision"] = "accept", ["bin"] = truck.Bin, ["way"] = truck.Way, ["key"] = key }),
        ("weigh-out", 14, new() { ["tare"] = truck.Tare.Kilograms.ToString(CultureInfo.InvariantCulture) }),
    ];

    // Sent again in the same moment, not one after the other: both must come to the same.
    private async Task<JsonElement> PostAsync(string path, Dictionary<string, string> body)
    {
        var answers = await Task.WhenAll(Enumerable.Range(0, 1 + repeats()).Select(_ => OnceAsync(path, body)));
        return answers[0];
    }

    private async Task<JsonElement> OnceAsync(string path, Dictionary<string, string> body)
    {
        var began = System.Diagnostics.Stopwatch.GetTimestamp();
        using var answer = await client.PostAsJsonAsync(new Uri($"/api/intake/{path}?by={name}", UriKind.Relative), body);
        var text = await answer.Content.ReadAsStringAsync();
        lock (milliseconds)
        {
            milliseconds.Add(System.Diagnostics.Stopwatch.GetElapsedTime(began).TotalMilliseconds);
        }

        return answer.IsSuccessStatusCode ? JsonSerializer.Deserialize<JsonElement>(text) : throw new InvalidOperationException($"{path} of {name}: {(int)answer.StatusCode} {text}");
    }
}
