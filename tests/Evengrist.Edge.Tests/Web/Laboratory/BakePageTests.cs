using System.Net;
using System.Text;
using Evengrist.Edge.Tests.Web.Trucks;

namespace Evengrist.Edge.Tests.Web.Laboratory;

/// <summary>Bakes of a small mill, on the page and over HTTP.</summary>
[Collection(WebSiteCollection.Name)]
public sealed partial class BakePageTests(WebSite site)
{
    [Fact]
    public async Task Page_ABake_IsKeptOrRefusedInWords()
    {
        using var client = await Tickets.NamedAsync(site);
        Task<HttpResponseMessage> Post(string loaves, string code = "b1", string control = "C", string flours = "C; F-WB", string at = "2025-09-17T14:00") => WebSite.PostAsync(client, "/laboratory/bake", "/laboratory/bake",
            [new("_handler", "bake"), new("Bake.Code", code), new("Bake.At", at), new("Bake.Baker", "Ada"), new("Bake.Control", control), new("Bake.Loaves", loaves), new("Bake.Flours", flours)]);
        async Task RefusesAsync(Task<HttpResponseMessage> sent, string says)
        {
            using var bad = await sent;
            var page = WebUtility.HtmlDecode(await bad.Content.ReadAsStringAsync());
            Assert.Contains("Not kept; what you typed is still here.", page, StringComparison.Ordinal);
            Assert.Contains(says, page, StringComparison.Ordinal);
        }

        await RefusesAsync(Post("C; 1; 800"), "Loaves, line 1: write flour; dough");
        await RefusesAsync(Post("C; 1; much; 200"), "the volume is a number; read \"much\"");
        await RefusesAsync(Post("C; 1; -5; 200"), "Volume lies from 20");
        await RefusesAsync(Post("C; 1; 800; 200", control: "X", flours: ""), "beside in the same session");
        await RefusesAsync(Post("C; 1; 800; 200", flours: "C; NOWHERE"), "there is no place \"NOWHERE\"");
        await RefusesAsync(Post("C; 1; 800; 200", at: "soon"), "give date and time");
        await RefusesAsync(Post(""), "1 to 60 loaves");
        foreach (var (code, trial) in new[] { ("b1", 840), ("b2", 848) })
        {
            using var kept = await Post($"C; 1; 800; 200\nT; 2; {trial}; 200; 75", code);
            Assert.Equal(HttpStatusCode.Redirect, kept.StatusCode);
        }

        var page = await Tickets.TextAsync(client, "/laboratory/bake?grams=100&moisture=11.5&asof=2025-09-18T10:00");
        Assert.Contains("97.18 g", page, StringComparison.Ordinal); // 100·86/88.5.
        Assert.Contains("+0.22", page, StringComparison.Ordinal); // (0.20 + 0.24)/2 mL/g.
        Assert.Contains("F-WB", page, StringComparison.Ordinal);
        Assert.Contains("lies from 5 to 20; read 40", await Tickets.TextAsync(client, "/laboratory/bake?moisture=40"), StringComparison.Ordinal);
        Assert.Contains("\"b2\"", await client.GetStringAsync(new Uri("/api/lab/bakes?asof=2025-09-18T10:00", UriKind.Relative)), StringComparison.Ordinal);
        using var nobody = await client.PostAsync(new Uri("/api/lab/bakes", UriKind.Relative), new StringContent("{}", Encoding.UTF8, "application/json"));
        Assert.Equal(HttpStatusCode.BadRequest, nobody.StatusCode);
        using var posed = await client.PostAsync(new Uri("/api/lab/bake", UriKind.Relative), new StringContent("""{ "tasting": { "kind": "Pairs", "tests": 20, "right": 15 } }""", Encoding.UTF8, "application/json"));
        Assert.Contains("\"leastRight5\":15", await posed.Content.ReadAsStringAsync(), StringComparison.Ordinal); // ISO 5495, from memory.
    }

    [Fact]
    public async Task Page_StepsRanksAndPhotographs_AreKeptAskedAboutOrRefused()
    {
        using var client = await Tickets.NamedAsync(site);
        const string Kept = "/laboratory/bake/kept?code=photo%201";
        List<KeyValuePair<string, string>> Fields(string took, string ranks, string reason) =>
        [
            new("_handler", "bake"), new("Bake.Code", "photo 1"), new("Bake.At", "2025-09-17T10:00"), new("Bake.Baker", "Ada"), new("Bake.Control", "K"), new("Bake.Loaves", "K; 1; 800; 200\nT; 2; 840; 200"), new("Bake.Flours", "K; F-WB"), new("Bake.Rankings", ranks),
            new("Bake.Formula", "straight dough"), new("Bake.Steps[0].Name", "proof"), new("Bake.Steps[0].AskedMinutes", "55"), new("Bake.Steps[0].AskedCelsius", "35"), new("Bake.Steps[0].Minutes", took), new("Bake.Steps[0].Celsius", "35"), new("Bake.Reason", reason),
        ];
        async Task<string> PostAsync(string took, string ranks = "Ada; T; K\nBen; T = K", string reason = "")
        {
            using var sent = await WebSite.PostAsync(client, "/laboratory/bake", "/laboratory/bake", Fields(took, ranks, reason));
            return sent.StatusCode == HttpStatusCode.Redirect ? "kept" : WebUtility.HtmlDecode(await sent.Content.ReadAsStringAsync());
        }

        var asked = await PostAsync("90");
        Assert.Contains("proof took 90 min, the formula asks 55: is that right?", asked, StringComparison.Ordinal);
        Assert.Contains("value=\"90\"", asked, StringComparison.Ordinal);
        Assert.Contains("proof, minutes is a number", await PostAsync("long"), StringComparison.Ordinal);
        Assert.Contains("Ada did not rank K", await PostAsync("55", "Ada; T"), StringComparison.Ordinal);
        Assert.Equal("kept", await PostAsync("90", reason: "a cold cabinet"));
        var page = await Tickets.TextAsync(client, Kept);
        Assert.All(["Odd, and confirmed:", "a cold cabinet", "far from it", "Two sums farther apart", "None is kept."], words => Assert.Contains(words, page, StringComparison.Ordinal));

        var png = Convert.FromBase64String("iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==");
        async Task<string> SendAsync(byte[] picture, string shows)
        {
            var html = await client.GetStringAsync(new Uri(Kept, UriKind.Relative));
            using var content = new MultipartFormDataContent
            {
                { new StringContent("photograph"), "_handler" }, { new StringContent(shows), "Photo.Shows" }, { new ByteArrayContent(picture), "Photo.File", "loaf.jpg" },
                { new StringContent(System.Text.RegularExpressions.Regex.Match(html, "name=\"__RequestVerificationToken\" value=\"([^\"]+)\"").Groups[1].Value), "__RequestVerificationToken" },
            };
            using var sent = await client.PostAsync(new Uri(Kept, UriKind.Relative), content);
            return sent.StatusCode == HttpStatusCode.Redirect ? "kept" : WebUtility.HtmlDecode(await sent.Content.ReadAsStringAsync());
        }

        var refused = await SendAsync([.. "this is a text, named like a picture, of no small length"u8], "the loaf");
        Assert.Contains("no whole JPEG, PNG or WebP picture", refused, StringComparison.Ordinal);
        Assert.Contains("value=\"the loaf\"", refused, StringComparison.Ordinal);
        Assert.Contains("Say what the photograph shows", await SendAsync(png, " "), StringComparison.Ordinal);
        Assert.Equal("kept", await SendAsync(png, "both loaves, cut"));
        Assert.Contains("alt=\"both loaves, cut\"", await client.GetStringAsync(new Uri(Kept, UriKind.Relative)), StringComparison.Ordinal);
        using var body = new ByteArrayContent(png) { Headers = { ContentType = new("text/plain") } }; // The type is found in the bytes.
        using var over = await client.PostAsync(new Uri("/api/lab/bakes/photographs?bake=photo%201&shows=again&by=Ada", UriKind.Relative), body);
        Assert.Equal(HttpStatusCode.Created, over.StatusCode);
        var hash = Hash().Match(await over.Content.ReadAsStringAsync()).Groups[1].Value;
        using var picture = await client.GetAsync(new Uri($"/laboratory/bake/photographs/{hash}", UriKind.Relative));
        Assert.Equal(("image/png", png.Length), (picture.Content.Headers.ContentType!.MediaType, (await picture.Content.ReadAsByteArrayAsync()).Length));
        using var large = new ByteArrayContent(new byte[(5 * 1024 * 1024) + 1]);
        using var tooLarge = await client.PostAsync(new Uri("/api/lab/bakes/photographs?bake=photo%201&shows=x&by=Ada", UriKind.Relative), large);
        Assert.Contains("at most 5 MiB are kept", await tooLarge.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        using var withdrawn = await WebSite.PostAsync(client, Kept, Kept, [new("_handler", "withdraw"), new("Photo.Hash", hash), new("Photo.Reason", "the wrong loaf")]);
        Assert.Equal(HttpStatusCode.Redirect, withdrawn.StatusCode);
        Assert.Equal("[]", await client.GetStringAsync(new Uri("/api/lab/bakes/photographs?bake=photo%201", UriKind.Relative)));
        Assert.Contains("No bake nothing", await Tickets.TextAsync(client, "/laboratory/bake/kept?code=nothing"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Page_ABlend_IsGuessedAndLearns()
    {
        using var client = await Tickets.NamedAsync(site);
        const string Guess = "/laboratory/bake/blend?property=dough+stability,+min&parts=WB;75;8%0AHG;25;12";
        Assert.Contains("9, ± not known", await Tickets.TextAsync(client, Guess), StringComparison.Ordinal);
        foreach (var (code, measured) in new[] { ("s1", "9.6"), ("s2", "9.2"), ("s3", "9.4") })
        {
            using var kept = await WebSite.PostAsync(client, Guess, "/laboratory/bake/blend", [new("_handler", "blend"), new("Blend.Property", "dough stability, min"), new("Blend.Parts", "WB;75;8\nHG;25;12"), new("Blend.Code", code), new("Blend.Measured", measured)]);
            Assert.Equal(HttpStatusCode.Redirect, kept.StatusCode);
        }

        Assert.Contains("9.4 ± 0.99", await Tickets.TextAsync(client, Guess), StringComparison.Ordinal); // mean off 0.4, s 0.2, t(2) 4.303 · 0.2 · √(4/3) = 0.9937.
        Assert.Contains("these sum to 90 %", await Tickets.TextAsync(client, "/laboratory/bake/blend?property=dough+stability,+min&parts=WB;65;8%0AHG;25;12"), StringComparison.Ordinal);
        Assert.Contains("Flours, line 1: write flour; share", await Tickets.TextAsync(client, "/laboratory/bake/blend?property=dough+stability,+min&parts=WB"), StringComparison.Ordinal);
        Assert.Contains("15 right are needed", await Tickets.TextAsync(client, "/laboratory/bake/blend?kind=Triangle&tests=30&right=15"), StringComparison.Ordinal); // ISO 4120, from memory.
        Assert.Contains("type whole numbers", await Tickets.TextAsync(client, "/laboratory/bake/blend?tests=5&right=6"), StringComparison.Ordinal);
    }

    [System.Text.RegularExpressions.GeneratedRegex("\"hash\":\"([0-9a-f]{64})\"")]
    private static partial System.Text.RegularExpressions.Regex Hash();
}
