using System.Globalization;
using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using Evengrist.Edge.Tests.Web.Trucks;
using Evengrist.Records.Laboratory;

namespace Evengrist.Edge.Tests.Web.Laboratory;

/// <summary>Calibrations of spectra on their page: the empty state, faults, looked at, kept by a name, spectra read. Spectra are invented: each constituent adds its own band.</summary>
[Collection(WebSiteCollection.Name)]
public sealed class CalibrationPageTests(WebSite site)
{
    private const string Page = "/laboratory/calibration";

    private static string Csv(int samples, double shift = 0) => string.Join('\n',
    [
        "id,protein," + string.Join(',', Enumerable.Range(0, 20).Select(c => $"w{1100 + (2 * c)}")),
        .. Enumerable.Range(0, samples).Select(i => $"s{i},{Protein(i).ToString(CultureInfo.InvariantCulture)}," + string.Join(',', Enumerable.Range(0, 20).Select(c => Value(i, c, shift).ToString("R", CultureInfo.InvariantCulture)))),
    ]);

    private static double Protein(int i) => 10 + (i * 7 % 11 * 0.3);

    private static double Value(int i, int c, double shift) => 0.3 + (0.01 * (Protein(i) + shift) * Math.Exp(-Math.Pow((c - 7) / 3.0, 2))) + (0.02 * (12 + (i * 5 % 13 * 0.2)) * Math.Exp(-Math.Pow((c - 13) / 4.0, 2))) + (1e-5 * Math.Sin((i + 1) * (c + 2) * 5.1));

    private static Dictionary<string, string> Form(string text, string act = "look", string property = "protein", string most = "4", string every = "4") => new()
    {
        ["_handler"] = "calibrate", ["Cal.Do"] = act, ["Cal.Text"] = text, ["Cal.Property"] = property, ["Cal.Unit"] = "%", ["Cal.Basis"] = "12mb", ["Cal.Method"] = "", ["Cal.Treatment"] = "none", ["Cal.Segments"] = "ten",
        ["Cal.Group"] = "", ["Cal.Most"] = most, ["Cal.Factors"] = "2", ["Cal.Every"] = every, ["Cal.LeaveOut"] = "",
    };

    [Fact]
    public async Task Calibration_LookedAtAndKept_ReadsSpectra()
    {
        using var client = await Tickets.NamedAsync(site);
        Assert.Contains("No calibration is kept.", await Tickets.TextAsync(client, Page), StringComparison.Ordinal);
        foreach (var (form, says) in new[]
        {
            (Form(""), "There are no spectra"), (Form(Csv(40), property: ""), "Name the property"), (Form(Csv(40), property: "ash"), "Property: read \"ash\"; expected one of the file's columns: protein"),
            (Form(Csv(40), most: "many"), "Factors up to: a whole number is needed; read “many”"), (Form(Csv(40), every: "1"), "Kept back each"), (Form(Csv(5)), "4 factors need 6"),
            (Form(Csv(40).Replace("s3,", "s3,x", StringComparison.Ordinal)), "line 5, column 2 (protein)"),
        })
        {
            Assert.Contains(says, await BodyAsync(client, form), StringComparison.Ordinal);
        }

        var looked = await BodyAsync(client, Form(Csv(40)));
        Assert.Contains("on 30 samples, treatment none. Nothing is kept yet.", looked, StringComparison.Ordinal);
        Assert.Contains("Kept back: 10", looked, StringComparison.Ordinal);
        Assert.Contains("s39,", looked, StringComparison.Ordinal); // What was sent is still in the form.
        Assert.Empty(SpectralCalibrations.All(site.Mill));
        using var kept = await WebSite.PostAsync(client, Page, Page, Form(Csv(40), "keep"));
        Assert.Equal(HttpStatusCode.Redirect, kept.StatusCode);
        Assert.Equal(1, Assert.Single(SpectralCalibrations.All(site.Mill)).Version);
        Assert.Contains("protein, version 1", await Tickets.TextAsync(client, Page), StringComparison.Ordinal);
        // New spectra: inside, and far outside.
        Dictionary<string, string> Read(string text, string with = "1 protein") => new() { ["_handler"] = "read-spectra", ["Read.With"] = with, ["Read.Text"] = text };
        Assert.Contains("inside", await BodyAsync(client, Read(Csv(3))), StringComparison.Ordinal);
        Assert.Contains("outside: far from the set, beyond the range", (await BodyAsync(client, Read(Csv(3, 12)))).Replace("spectrum not known, ", "", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Contains("Choose a calibration that is kept", await BodyAsync(client, Read(Csv(3), "9 ash")), StringComparison.Ordinal);
        Assert.Contains("not on the axis of the calibration", await BodyAsync(client, Read("id,w1100,w1102\na,1,2\n")), StringComparison.Ordinal);

        // Recorded on their samples, twice the same once; a number without a sample is refused. No instrument is named: other tests may have left a table without one. The reason answers what is asked where they have left readings unlike these.
        foreach (var code in new[] { "s0", "s1" })
        {
            using var taken = await client.PostAsJsonAsync("/api/lab/samples?by=Ada", new { code, place = "F-WB", at = "2025-09-16T08:00", tests = "Protein by NIR" });
            Assert.True(taken.IsSuccessStatusCode, await taken.Content.ReadAsStringAsync());
        }

        IEnumerable<KeyValuePair<string, string>> Record(string text) => Read(text).Concat([new("Read.Do", "record"), new("Read.Key", "k1"), new("Read.Method", "NIR"), new("Read.Measured", "2025-09-16T09:00"), new("Read.Reason", "drawn spectra")]);
        Assert.Contains("There is no sample \"s2\"", await BodyAsync(client, Record(Csv(3))), StringComparison.Ordinal);
        Assert.Contains("2 readings added, 0 known already", await BodyAsync(client, Record(Csv(2))), StringComparison.Ordinal);
        Assert.Contains("0 readings added, 2 known already", await BodyAsync(client, Record(Csv(2))), StringComparison.Ordinal);

        // Bias: the test first, then a further version; over HTTP the same.
        var pairs = "sample;reference;read\n" + string.Join('\n', Enumerable.Range(0, 12).Select(i => string.Create(CultureInfo.InvariantCulture, $"s{i};{Protein(i) - 0.3};{Protein(i) + (i % 2 * 0.01)}")));
        Dictionary<string, string> Adjust(string act, string text, string why = "new lamp") => new() { ["_handler"] = "adjust", ["Adjust.Do"] = act, ["Adjust.With"] = "1 protein", ["Adjust.Pairs"] = text, ["Adjust.Set"] = "Bias", ["Adjust.Why"] = why };
        Assert.Contains("-0.3050", await BodyAsync(client, Adjust("look", pairs)), StringComparison.Ordinal);
        Assert.Contains("line 2, column 2 (reference): read \"x\"", await BodyAsync(client, Adjust("look", "sample;reference;read\ns;x;1")), StringComparison.Ordinal);
        Assert.Contains("Say why it is set", await BodyAsync(client, Adjust("keep", pairs, "")), StringComparison.Ordinal);
        Assert.Single(SpectralCalibrations.All(site.Mill));
        using var set = await WebSite.PostAsync(client, Page, Page, Adjust("keep", pairs));
        Assert.Equal(HttpStatusCode.Redirect, set.StatusCode);
        var listed = await client.GetFromJsonAsync<JsonElement>("/api/lab/calibrations");
        Assert.Equal(-0.305, listed[1].GetProperty("adjustments")[0].GetProperty("bias").GetDouble(), 1e-9);
        using var late = await client.PostAsJsonAsync("/api/lab/calibrations/adjust?by=Ada", new Dictionary<string, string> { ["with"] = "1 protein", ["pairs"] = pairs, ["do"] = "keep", ["set"] = "Bias", ["why"] = "x" });
        Assert.Contains("Version 2 of protein is kept since", await late.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        using var read = await client.PostAsJsonAsync("/api/lab/calibrations/read", new Dictionary<string, string> { ["with"] = "2 protein", ["text"] = Csv(1) });
        Assert.Equal(Protein(0) - 0.305, JsonDocument.Parse(await read.Content.ReadAsStringAsync()).RootElement.GetProperty("readings")[0].GetProperty("value").GetDouble(), 0.05);
        Assert.Contains("12 pairs: bias -0.3050 beyond", await Tickets.TextAsync(client, Page), StringComparison.Ordinal);
    }

    private static async Task<string> BodyAsync(HttpClient client, IEnumerable<KeyValuePair<string, string>> form)
    {
        using var answer = await WebSite.PostAsync(client, Page, Page, form);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        return WebUtility.HtmlDecode(await answer.Content.ReadAsStringAsync());
    }
}
