using System.Globalization;
using Evengrist.Edge.Tests.Web;
using Evengrist.Edge.Tests.Web.Trucks;
using Evengrist.Intake.Grading;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Records.Intake;
using Evengrist.Tests.Intake.Grading;
using NodaTime;

namespace Evengrist.Edge.Tests.Grades;

[Collection(TruckSiteCollection.Name)]
public sealed class GradesPageTests(WebSite site)
{
    private static readonly string[] Fields = ["f-HeatDamaged", "f-Damaged", "f-ForeignMaterial", "f-ShrunkenAndBroken"];

    public static TheoryData<string> Ids => [.. GradeVectors.All.Select(v => v.Id)];

    [Theory]
    [MemberData(nameof(Ids))]
    public async Task Page_Vector_ShowsGradeAndDecidingFactor(string id)
    {
        var vector = GradeVectors.Of(id);
        using var client = site.Client();
        var page = await Tickets.TextAsync(client, Address(vector));
        Assert.Contains($"reckoned {vector.Grade}", page, StringComparison.Ordinal);
        Assert.All(vector.Deciding, factor => Assert.Contains(factor, page[page.IndexOf("decided by", StringComparison.Ordinal)..], StringComparison.Ordinal));
    }

    [Fact]
    public async Task Page_WithoutFindings_ShowsTheTableWithSourceAndEdition()
    {
        using var client = site.Client();
        var page = await Tickets.TextAsync(client, "/intake/grades");
        Assert.All(["US Standards for Wheat, 2015", "7 CFR 810.2204, 2015 edition", "heat-damaged kernels", "U.S. No. 5"], said => Assert.Contains(said, page, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("codex-wheat", "from memory, not verified")]
    [InlineData("canada-red-spring", "not read here")]
    public async Task Page_OfAStandardNotWhollyKnown_SaysSo(string standard, string says)
    {
        using var client = site.Client();
        Assert.Contains(says, await Tickets.TextAsync(client, $"/intake/grades?standard={standard}"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("f-Damaged", "120", "cannot be")]
    [InlineData("f-Damaged", "1,2", "which may mean thousands or decimals")]
    [InlineData("f-Damaged", "lots", "is no number of %")]
    [InlineData("f-HeatDamaged", "3", "cannot be above damaged kernels")]
    [InlineData("class", "HRX", "has no class")]
    public async Task Page_WrongInput_IsASentenceAndNothingIsLost(string field, string value, string says)
    {
        using var client = site.Client();
        var address = System.Text.RegularExpressions.Regex.Replace(Address(GradeVectors.Of("G2")), $"&{field}=[^&]*", $"&{field}={Uri.EscapeDataString(value)}");
        var html = await client.GetStringAsync(new Uri(address, UriKind.Relative));
        Assert.Contains(says, Tickets.Plain(html), StringComparison.Ordinal);
        Assert.Contains($"value=\"{value}\"", html, StringComparison.Ordinal);
        Assert.Contains("value=\"59.94\"", html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Page_FactorMissing_IsNotGradedAndNamed()
    {
        using var client = site.Client();
        var page = await Tickets.TextAsync(client, "/intake/grades?standard=us-wheat&class=HRW&f-TestWeight=61&none=1");
        Assert.Contains("Missing for the grade: heat-damaged kernels, damaged kernels, foreign material, shrunken and broken, contrasting classes, wheat of other classes.", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Page_StandardNotHeld_IsTold()
    {
        using var client = site.Client();
        Assert.Contains("No standard “us-wheat-2020” is held here.", await Tickets.TextAsync(client, "/intake/grades?standard=us-wheat-2020"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Ticket_OfATruckWithGradeFactors_ShowsHouseBandAndGrade()
    {
        var house = new HouseClass("HW", 1, "hard wheat", ["HW strong", "HW plain"], [new(Property.Protein, "%", 1) { Basis = Basis.At12, AtLeast = [12.5m, 11m] }]) { OfficialClass = "HRW" };
        site.Mill.Papers(HouseClassJson.Kind).Keep("HW", 1, HouseClassJson.Write(house), "Ada Miller");
        site.Mill.Record([.. new (Property What, decimal Value, string Unit)[]
        {
            (Property.TestWeight, 59.9m, "lb/bu"), (Property.Damaged, 1.2m, "%"), (Property.HeatDamaged, 0m, "%"), (Property.ForeignMaterial, 0.3m, "%"), (Property.ShrunkenAndBroken, 1.4m, "%"), (Property.OtherClasses, 0m, "%"),
        }.Select(r => new Measure($"grade-{r.What}", "25-0709-001", TinyMill.Morning - Duration.FromDays(60), r.What, r.Value, r.Unit, default, "picked by hand"))], "Ada Miller", "test");
        using var client = site.Client();
        var page = await Tickets.TextAsync(client, "/intake/25-0709-001");
        Assert.All(["reckoned HW plain", "U.S. No. 2 Hard Red Winter wheat", "Taken as none, not looked for"], said => Assert.Contains(said, page, StringComparison.Ordinal));
        site.Mill.Record([new Happen("grade-smelt", "25-0709-001", TinyMill.Morning - Duration.FromDays(60), HappeningKind.Observed, ObserveLoad.NothingFound)], "Ada Miller", "test");
        var clean = await Tickets.TextAsync(client, "/intake/25-0709-001");
        Assert.Contains("U.S. No. 2 Hard Red Winter wheat", clean, StringComparison.Ordinal);
        Assert.DoesNotContain("Noticed, not in the grades", clean, StringComparison.Ordinal);
        site.Mill.Record([new Happen("grade-smell", "25-0709-001", TinyMill.Morning - Duration.FromDays(60), HappeningKind.Observed, "musty, glass, driver in a hurry")], "Ada Miller", "test");
        var musty = await Tickets.TextAsync(client, "/intake/25-0709-001");
        Assert.All(["U.S. Sample grade Hard Red Winter wheat", "Noticed, not in the grades below: glass", "Noticed, not in the grades below: driver in a hurry"], said => Assert.Contains(said, musty, StringComparison.Ordinal));
        Assert.Contains("No grade factors were picked", await Tickets.TextAsync(client, "/intake/25-0709-002"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task House_KeptOnThePage_CountsAndAVersionNeverChanges()
    {
        using var client = await Tickets.NamedAsync(site);
        var json = HouseClassJson.Write(new HouseClass("HX", 1, "tried on the page", ["first", "second"], [new(Property.Protein, "%", 1) { Basis = Basis.At12, AtLeast = [12.5m, 11m] }]));
        async Task<string> KeepAsync(string text)
        {
            using var answer = await WebSite.PostAsync(client, "/intake/grades/house", "/intake/grades/house", [new("_handler", "house"), new("Json", text)]);
            return answer.Headers.Location?.ToString() ?? Tickets.Plain(await answer.Content.ReadAsStringAsync());
        }

        Assert.EndsWith("/intake/grades/house?code=HX&done=true", await KeepAsync(json), StringComparison.Ordinal);
        Assert.Contains("is kept already", await KeepAsync(json.Replace("12.5", "12.6", StringComparison.Ordinal)), StringComparison.Ordinal);
        Assert.Contains("stricter than an earlier one", await KeepAsync(json.Replace("12.5", "10.5", StringComparison.Ordinal)), StringComparison.Ordinal);
        Assert.Contains("Not kept; what you wrote is still here.", await KeepAsync("{"), StringComparison.Ordinal);
        Assert.Contains("reckoned second", await Tickets.TextAsync(client, "/intake/grades?standard=house%3AHX&f-Protein=11.2"), StringComparison.Ordinal);
        Assert.Contains("\"code\": \"HX\"", await client.GetStringAsync(new Uri("/api/intake/house-classes", UriKind.Relative)), StringComparison.Ordinal);
    }

    private static string Address(GradeVector vector)
    {
        string Text(decimal value) => value.ToString(CultureInfo.InvariantCulture);
        var percents = string.Concat(Fields.Zip(vector.Percents, (f, p) => $"&{f}={Text(p)}"));
        return $"/intake/grades?standard=us-wheat&class={Uri.EscapeDataString(vector.Class)}&leading={vector.Leading}&f-TestWeight={Text(vector.TestWeight)}&tw={Uri.EscapeDataString("lb/bu")}{percents}"
            + $"&f-ContrastingClasses=0&f-OtherClasses={Text(vector.OtherClasses)}&f-InsectDamagedKernels={vector.InsectDamaged}&f-Glass={vector.Glass}&looked=1&none=1"
            + (vector.Observed.Length > 0 ? "&seen=Musty" : "") + (vector.Unrounded ? "&sums=unrounded" : "");
    }
}
