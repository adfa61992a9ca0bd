using System.Data.Common;
using System.Diagnostics;
using System.Globalization;
using Evengrist.Bench.Genealogy.Graph;
using Evengrist.Ledger;

namespace Evengrist.Bench.Genealogy;

/// <summary>A general database with the same edges, indexed both ways, asked by one recursive query over paths with exact shares.</summary>
internal abstract class SqlEngine(DbConnection connection, int budgetSeconds) : IDisposable
{
    private const string Recursive = "WITH RECURSIVE walk(id, share) AS (SELECT CAST(@start AS integer), CAST(1 AS double precision) UNION ALL ";

    private const string BackQuery = Recursive
        + "SELECT edge.parent, walk.share * edge.share FROM walk JOIN edge ON edge.child = walk.id) "
        + "SELECT id, sum(share) FROM walk WHERE id < @bound GROUP BY id";

    private const string ForwardQuery = Recursive
        + "SELECT edge.child, walk.share * edge.share FROM walk JOIN edge ON edge.parent = walk.id) "
        + "SELECT id, sum(share) FROM walk WHERE id >= @bound GROUP BY id";

    private readonly TimeSpan budget = TimeSpan.FromSeconds(budgetSeconds);
    private readonly Stopwatch clock = new();
    private int compared;
    private int wrong;

    protected abstract string Name { get; }

    protected TimeSpan Left => budget - clock.Elapsed;

    private string NotFinished => $"not finished in {budgetSeconds} s";

    public EngineResult Measure(GenealogyGraph graph, ForwardRows forward)
    {
        clock.Restart();
        try
        {
            Load(graph);
        }
        catch (Exception e) when (IsTimeout(e))
        {
            var part = new Part([], 0, Note: "not loaded");
            return new EngineResult(Name, NotFinished, double.NaN, part, part, "-");
        }

        var load = clock.Elapsed.TotalSeconds.ToString("0.0", CultureInfo.InvariantCulture);
        var sweep = new Sweep(graph.Rows, forward);
        var back = Time(BackQuery, graph.BackQueries(), graph.Layer0, start => { sweep.Back(start); return sweep.Origins; }, sweep, warm: true);
        var ahead = Time(ForwardQuery, graph.ForwardQueries(), graph.Pack0, start => PacksIn(sweep.Forward(start), graph), sweep, warm: false);
        var answers = wrong > 0 ? $"{wrong} of {compared} DIFFER" : $"{compared} of {compared} agree";
        return new EngineResult(Name, load, Megabytes(), back, ahead, answers);
    }

    public virtual void Dispose() => connection.Dispose();

    protected abstract void Load(GenealogyGraph graph);

    protected abstract double Megabytes();

    protected abstract bool IsTimeout(Exception e);

    /// <summary>Sees to it that the command ends when the time left is over.</summary>
    protected abstract IDisposable? Limit(DbCommand command);

    protected void Execute(string sql)
    {
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        using var limit = Limit(command);
        command.ExecuteNonQuery();
    }

    private static ReadOnlySpan<int> PacksIn(ReadOnlySpan<int> reached, GenealogyGraph graph)
    {
        var first = 0;
        while (first < reached.Length && reached[first] < graph.Pack0)
        {
            first++;
        }

        return reached[first..];
    }

    private delegate ReadOnlySpan<int> Own(int start);

    private Part Time(string sql, int[] queries, int bound, Own own, Sweep sweep, bool warm)
    {
        clock.Restart();
        List<double> done = [];
        try
        {
            if (warm)
            {
                Ask(sql, queries[0], bound);
            }

            // A question is begun only while one as long as the last would still fit.
            for (var i = 0; i < queries.Length && (i == 0 || Left.TotalMilliseconds > done[^1]); i++)
            {
                var start = Stopwatch.GetTimestamp();
                var rows = Ask(sql, queries[i], bound);
                done.Add(Stopwatch.GetElapsedTime(start).TotalMilliseconds);
                Compare(rows, own(queries[i]), sweep);
            }
        }
        catch (Exception e) when (IsTimeout(e))
        {
            // What was answered in time is still a figure; the table says how many of the set it stands for.
        }

        return new Part(done, queries.Length, Note: done.Count == 0 ? NotFinished : "");
    }

    private List<(int Parcel, double Share)> Ask(string sql, int start, int bound)
    {
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        Bind(command, "start", start);
        Bind(command, "bound", bound);
        using var limit = Limit(command);
        using var reader = command.ExecuteReader();
        List<(int, double)> rows = [];
        while (reader.Read())
        {
            rows.Add((reader.GetInt32(0), reader.GetDouble(1)));
        }

        return rows;
    }

    private void Compare(List<(int Parcel, double Share)> rows, ReadOnlySpan<int> own, Sweep sweep)
    {
        compared++;
        wrong += rows.Count == own.Length && rows.TrueForAll(row => Math.Abs(row.Share - sweep.ShareOf(row.Parcel)) <= 1e-9) ? 0 : 1;
    }

    private static void Bind(DbCommand command, string name, int value)
    {
        var parameter = command.CreateParameter();
        parameter.ParameterName = name;
        parameter.Value = value;
        command.Parameters.Add(parameter);
    }
}
