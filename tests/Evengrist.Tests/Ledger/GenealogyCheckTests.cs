using Evengrist.Bench.Genealogy.Graph;
using Evengrist.Ledger;

namespace Evengrist.Tests.Ledger;

/// <summary>
/// The synthetic crop year at a tenth. Source of the wanted values: docs/model/genealogy.md, reckoned by an independent
/// implementation; they stand in <see cref="PublishedTables"/>.
/// </summary>
public class GenealogyCheckTests
{
    private static readonly GenealogySpec Tenth = new(0.1);
    private static readonly GenealogyGraph Graph = GenealogyGenerator.Generate(Tenth);
    private static readonly ForwardRows Rows = new(Graph.Rows);

    [Fact]
    public void Findings_Tenth_ReproduceEveryPublishedRow()
    {
        var oracle = new GenealogyOracle(Graph, Rows);
        var findings = GenealogyChecks.Of(Graph).Concat(oracle.Back()).Concat(oracle.Forward()).ToDictionary(finding => finding.Name);
        var names = PublishedTables.Names(Tenth);
        Assert.Equal(8, names.Count);
        foreach (var name in names)
        {
            Assert.NotEmpty(findings[name].Wanted);
            Assert.True(findings[name].Passed, $"{name}: {findings[name].Value} [{findings[name].Verdict}]");
        }
    }

    [Fact]
    public void BackAndForward_QuerySet_AreTheSameShareAndSumToOne()
    {
        var back = new Sweep(Graph.Rows);
        var forward = new Sweep(Graph.Rows, Rows);
        foreach (var pack in Graph.BackQueries())
        {
            back.Back(pack);
            var sum = 0.0;
            foreach (var truck in back.Origins)
            {
                sum += back.ShareOf(truck);
            }

            Assert.Equal(1, sum, 1e-9);
        }

        foreach (var truck in Graph.ForwardQueries())
        {
            var reached = forward.Forward(truck).ToArray();
            for (var i = 0; i < reached.Length; i += reached.Length / 9)
            {
                back.Back(reached[i]);
                Assert.Equal(back.ShareOf(truck), forward.ShareOf(reached[i]), 1e-12);
            }
        }
    }

    [Fact]
    public void Forward_RowsBuiltHalfWay_SameAsWholeRows()
    {
        var growing = new Evengrist.Ledger.ParentRows();
        ForwardRows? half = null;
        for (var parcel = 0; parcel < Graph.Rows.Count; parcel++)
        {
            half = parcel == Graph.Pack0 + Tenth.Packs / 4 ? new ForwardRows(growing) : half;
            growing.Add(Graph.Rows.ParentsOf(parcel), Graph.Rows.SharesOf(parcel));
        }

        var early = new Sweep(growing, half);
        var whole = new Sweep(Graph.Rows, Rows);
        foreach (var truck in Graph.ForwardQueries())
        {
            Assert.Equal(whole.Forward(truck).ToArray(), early.Forward(truck).ToArray());
            foreach (var parcel in whole.Reached)
            {
                Assert.Equal(whole.ShareOf(parcel), early.ShareOf(parcel));
            }
        }
    }

    [Theory]
    [InlineData(0.004, 1, 19)]
    [InlineData(0.01, 77, 4)]
    [InlineData(0.02, 20250701, 31)]
    public void Findings_AnyScaleSeedAndBins_HoldTogether(double scale, ulong seed, int bins)
    {
        var graph = GenealogyGenerator.Generate(new GenealogySpec(scale, seed, bins));
        var rows = graph.Rows;
        Assert.Equal(graph.Pack0 + graph.Spec.Packs, rows.Count);
        for (var parcel = 0; parcel < rows.Count; parcel++)
        {
            var sum = 0.0;
            foreach (var share in rows.SharesOf(parcel))
            {
                sum += share;
            }

            Assert.Equal(parcel < graph.Layer0 ? 0 : 1, sum, 1e-12);
        }

        Assert.All(new GenealogyOracle(graph, new ForwardRows(rows)).Back(), row => Assert.Contains("Σ = 1.000000000", row.Value));
    }

    [Fact]
    public void Generate_ArgumentsThatMakeNoCropYear_AreRefused()
    {
        Assert.Throws<ArgumentException>(() => GenealogyGenerator.Generate(new GenealogySpec(0.1, Bins: 3)));
        Assert.Throws<ArgumentException>(() => GenealogyGenerator.Generate(new GenealogySpec(0)));
        var empty = Assert.Throws<ArgumentException>(() => GenealogyGenerator.Generate(new GenealogySpec(0.002)));
        Assert.Contains("bins empty", empty.Message, StringComparison.Ordinal);
    }
}
