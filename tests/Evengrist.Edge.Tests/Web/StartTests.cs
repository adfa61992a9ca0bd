using System.Net;
using Evengrist.Web.Start;

namespace Evengrist.Edge.Tests.Web;

public sealed class StartTests
{
    [Theory]
    [InlineData("http://0.0.0.0:5180")]
    [InlineData("http://*:5180")]
    [InlineData("http://+:80")]
    [InlineData("http://192.168.1.4:5180")]
    [InlineData("http://[::]:5180")]
    [InlineData("http://mill.example:5180")]
    [InlineData("https://127.0.0.1:5181")]
    [InlineData("http://127.0.0.1:5180;http://10.0.0.1:80")]
    [InlineData("5180")]
    public void Addresses_NotLoopback_AreRefusedWithWhatToDo(string urls)
    {
        var refusal = Assert.Throws<StartRefusal>(() => Listening.Addresses(urls));
        Assert.Contains("this machine alone", refusal.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("http://127.0.0.1:6000")]
    [InlineData("http://localhost:6000")]
    [InlineData("http://[::1]:6000")]
    public void Addresses_Loopback_AreTaken(string url) => Assert.Equal([url], Listening.Addresses(url));

    [Theory]
    [InlineData("--frobnicate")]
    [InlineData("--data")]
    [InlineData("--data", "--empty")]
    [InlineData("--empty", "--reset-demo")]
    public void Read_BadOptions_AreRefused(params string[] args) => Assert.Throws<StartRefusal>(() => WebOptions.Read(args));

    [Fact]
    public async Task Run_OnEveryAddress_EndsWithStatusTwoAndAMessage()
    {
        using var output = new StringWriter();
        using var errors = new StringWriter();
        var status = await EvengristProgram.RunAsync(["--urls", "http://0.0.0.0:0", "--data", Path.GetTempPath()], output, errors);
        Assert.Equal(2, status);
        Assert.Contains("0.0.0.0", errors.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Run_WithAFileForADataFolder_EndsWithStatusTwoAndAMessage()
    {
        using var output = new StringWriter();
        using var errors = new StringWriter();
        var file = Path.GetTempFileName();
        Assert.Equal(2, await EvengristProgram.RunAsync(["--data", file], output, errors));
        Assert.Contains("--data PATH", errors.ToString(), StringComparison.Ordinal);
        File.Delete(file);
    }

    [Fact]
    public async Task Starting_WhileTheMillIsBeingOpened_PagesWaitAndTheApiSaysAskAgain()
    {
        var folder = Directory.CreateTempSubdirectory("evengrist-start-");
        using var mayOpen = new ManualResetEventSlim();
        await using var app = EvengristApp.Build(new WebOptions(folder.FullName, Urls: "http://127.0.0.1:0"), tell =>
        {
            tell(new Opening("Laying out the year.", 0.42));
            mayOpen.Wait(TimeSpan.FromSeconds(60));
            return TinyMill.Open(Path.Combine(folder.FullName, "tiny.db"));
        });
        await app.StartAsync();
        using var client = new HttpClient(new HttpClientHandler { AllowAutoRedirect = false }) { BaseAddress = new Uri(app.Urls.First()) };

        using var first = await client.GetAsync(new Uri("/bins?outflow=core", UriKind.Relative));
        Assert.Equal(HttpStatusCode.Redirect, first.StatusCode);
        Assert.StartsWith("/starting?back=", first.Headers.Location!.ToString(), StringComparison.Ordinal);
        var page = await client.GetStringAsync(first.Headers.Location);
        Assert.Contains("Laying out the year.", page, StringComparison.Ordinal);
        Assert.Contains("42 %", page, StringComparison.Ordinal);
        using var api = await client.GetAsync(new Uri("/api/bins", UriKind.Relative));
        Assert.Equal(HttpStatusCode.ServiceUnavailable, api.StatusCode);

        mayOpen.Set();
        HttpResponseMessage after;
        do
        {
            await Task.Delay(50);
            after = await client.GetAsync(first.Headers.Location);
        }
        while (after.StatusCode == HttpStatusCode.OK);
        Assert.Equal("/bins?outflow=core", new Uri(client.BaseAddress, after.Headers.Location!).PathAndQuery);
    }

    [Fact]
    public async Task Starting_WhereTheMillCannotBeOpened_SaysWhy()
    {
        var folder = Directory.CreateTempSubdirectory("evengrist-fault-");
        await using var app = EvengristApp.Build(new WebOptions(folder.FullName, Urls: "http://127.0.0.1:0"), _ => throw new InvalidDataException("The file is torn."));
        await app.StartAsync();
        using var client = new HttpClient { BaseAddress = new Uri(app.Urls.First()) };
        string page;
        do
        {
            await Task.Delay(50);
            page = await client.GetStringAsync(new Uri("/", UriKind.Relative));
        }
        while (!page.Contains("could not be opened", StringComparison.Ordinal));
        Assert.Contains("The file is torn.", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Open_AnEmptyMill_HoldsNothingAndIsNoDemonstration()
    {
        var folder = Directory.CreateTempSubdirectory("evengrist-empty-");
        using var mill = MillOpener.Open(new WebOptions(folder.FullName, Empty: true), NodaTime.SystemClock.Instance, _ => { });
        Assert.Equal(0, mill.Ask(view => view.Book.Last.Value));
        Assert.False(mill.Settings.IsDemonstration);
        Assert.True(File.Exists(Path.Combine(folder.FullName, "mill.db")));
    }
}
