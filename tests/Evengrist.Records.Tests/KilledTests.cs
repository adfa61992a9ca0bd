using System.Diagnostics;
using System.Globalization;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Records.Tests.Stores;

namespace Evengrist.Records.Tests;

public sealed class KilledTests
{
    [Theory, OnSqlite, OnPostgres]
    public void Kill_WhileWriting_LosesNoAcknowledgedFactAndLeavesNoHalfBatch(Store store)
    {
        using var site = new TestSite(store);
        var random = new Random(2026);
        var acknowledged = 0L;
        for (var kill = 0; kill < (store == Store.Sqlite ? 50 : 10); kill++)
        {
            acknowledged = Math.Max(acknowledged, WriteUntilKilled(site.Options, kill, random));
            Check(site, acknowledged);
        }

        Assert.True(acknowledged > 1000, "The writer was killed before it wrote anything worth speaking of.");
    }

    /// <summary>Lets a child write, kills it (SIGKILL) at a random moment, and returns the last number it had said was safe.</summary>
    private static long WriteUntilKilled(MillOptions options, int kill, Random random)
    {
        var program = Path.Combine(AppContext.BaseDirectory, "Evengrist.Records.Killed.dll");
        using var child = Process.Start(new ProcessStartInfo("dotnet",
            [program, options.Path is null ? "postgres" : "file", options.Path ?? options.Postgres!, $"r{kill}"]) { RedirectStandardOutput = true })!;

        // One in five dies at any moment from its start on, migrating and opening included; the others in the midst of writing.
        var first = kill % 5 == 0 ? null : child.StandardOutput.ReadLine();
        Thread.Sleep(random.Next(kill % 5 == 0 ? 400 : 60));
        child.Kill();
        var last = (first + "\n" + child.StandardOutput.ReadToEnd()).Split('\n').LastOrDefault(line => line.Length > 0);
        child.WaitForExit();
        return last is null ? 0 : long.Parse(last, CultureInfo.InvariantCulture);
    }

    private static void Check(TestSite site, long acknowledged)
    {
        using var mill = site.Open();
        mill.Ask(view =>
        {
            var book = view.Book;

            // Opening refuses a gap in the numbers, so every fact up to the last is there.
            Assert.True(book.Last.Value >= acknowledged, $"Fact {acknowledged} was acknowledged; the newest there is {book.Last}.");
            var wholes = book.Happenings.Select(h => long.Parse(h.Text.Split(' ')[1], CultureInfo.InvariantCulture)).ToList();
            Assert.Equal(book.Last.Value, wholes.Sum() + Math.Min(book.Last.Value, 4));
            Assert.All(book.OfKind(PlaceKind.Truck), truck => Assert.Equal(Mass.Zero, book.StockOf(truck.Id)));
            Assert.Equal(Mass.Zero, book.Places.Aggregate(Mass.Zero, (sum, place) => sum + book.StockOf(place.Id)));
            return 0;
        });
    }
}
