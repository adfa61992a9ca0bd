using System.Globalization;
using Evengrist.Demo;
using Evengrist.Ledger;
using Evengrist.Records;
using Evengrist.Web.Sights.Trucks;
using NodaTime;

namespace Evengrist.Web.Start;

/// <summary>Opens the mill that the command line names, the demonstration laid out at its first start.</summary>
public static class MillOpener
{
    private const string Demonstration = "demonstration";
    private const string Own = "mill";

    /// <summary>Opens it.</summary>
    /// <exception cref="MillCannotOpen">It cannot be opened; the message says what to do.</exception>
    public static Mill Open(WebOptions options, IClock clock, Action<Opening> tell)
    {
        ArgumentNullException.ThrowIfNull(options);
        ArgumentNullException.ThrowIfNull(tell);
        Directory.CreateDirectory(options.DataFolder);
        var file = Path.Combine(options.DataFolder, (options.Empty ? Own : Demonstration) + ".db");
        var laid = Path.Combine(options.DataFolder, options.Postgres is null ? Demonstration + ".laid" : Demonstration + "-on-postgres.laid");
        if (options.ResetDemo)
        {
            ThrowAway(options, file, laid);
        }

        var mill = Mill.Open(options.Postgres is { } connection ? MillOptions.Shared(connection) : MillOptions.InFile(file), clock, progress => tell(Said(progress)));
        if (!options.Empty && !File.Exists(laid))
        {
            LayOut(mill, tell);
            File.WriteAllText(laid, "The demonstration's year is whole. Without this file it is gone through again at the next start, and what is missing is added.\n");
        }

        ExampleContract.KeepWhereNoneIs(mill);
        return mill;
    }

    private static void LayOut(Mill mill, Action<Opening> tell)
    {
        try
        {
            DemonstrationMill.Load(mill, progress => tell(new Opening(
                $"Laying out the demonstration: {progress.Day.ToString("d MMMM uuuu", CultureInfo.InvariantCulture)}, {progress.Facts.ToString("N0", CultureInfo.InvariantCulture)} facts recorded.", progress.Share)));
        }
        catch (Exception trouble)
        {
            mill.Dispose();
            throw trouble is LedgerRefusal or InvalidOperationException
                ? new MillCannotOpen($"The demonstration could not be laid out over what is there: {trouble.Message} Start once with --reset-demo to lay it out anew, or with --empty for a mill of your own.", trouble)
                : new MillCannotOpen(trouble.Message, trouble);
        }
    }

    private static void ThrowAway(WebOptions options, string file, string laid)
    {
        if (options.Postgres is not null)
        {
            throw new MillCannotOpen("--reset-demo throws away the demonstration's file, and a shared database is none. Empty the database with its own means, or leave --postgres out.");
        }

        foreach (var path in (string[])[file, file + "-wal", file + "-shm", laid])
        {
            File.Delete(path);
        }
    }

    private static Opening Said(MillProgress progress) => new(progress.Step, progress.Total > 0 ? (double)progress.Done / progress.Total : null);
}
