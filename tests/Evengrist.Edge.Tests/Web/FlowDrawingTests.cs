using System.Text.Json;
using Evengrist.Edge.Tests.Plant;
using Evengrist.Milling.Sheet;
using Evengrist.Web.Sights.Flow;

namespace Evengrist.Edge.Tests.Web;

/// <summary>What a page gives the browser to draw.</summary>
public sealed class FlowDrawingTests
{
    private static readonly FlowSheet Sheet = FlowSheetJson.TryRead(File.ReadAllText(Repository.Sample("cases", "flow-sheet.json")), out var sheet, out _) ? sheet : throw new InvalidOperationException();

    [Fact]
    public void Drawing_OfASheet_HasEveryPassageProductAndWay()
    {
        var drawing = FlowDrawing.Of(Sheet);
        Assert.Equal(17 + 15, drawing.Nodes.Count);
        Assert.Equal(Sheet.Passages.Sum(p => p.Outlets.Sum(o => o.Count)), drawing.Edges.Count);
        Assert.All(drawing.Edges, e => Assert.InRange(e.Outlet, 0, drawing.Nodes.Single(n => n.Id == e.From).Outlets.Count - 1));
        Assert.All(drawing.Edges, e => Assert.Contains(drawing.Nodes, n => n.Id == e.To));
        var purifier = drawing.Nodes.Single(n => n.Id == "P1");
        Assert.Equal(["air", "< 560", "< 710", "< 1120", "rest"], purifier.Outlets);
        Assert.Equal(["air 1.6 m/s"], purifier.Lines);
        Assert.Equal("B1, break: gap 550 µm; roll length 2000 mm; flutes 3.8 for each cm, dull to dull; differential 2.5 : 1; fast roll 7 m/s; cloth area 12 m²; cloth 1 overs of 1120 µm to B2; cloth 2 overs of 500 µm to P1; cloth 3 overs of 280 µm to P2; cloth 4 throughs of 132 µm to 1B (10XX); the rest to M1", drawing.Nodes[0].Title);
    }

    [Fact]
    public void Drawing_WithLinesAndWeights_CarriesThem()
    {
        var drawing = FlowDrawing.Of(Sheet, p => $"#{p.Code}", code => [$"load of {code}", "ash"], way => way.Outlet + 0.5);
        var node = drawing.Nodes.Single(n => n.Id == "1B");
        Assert.Equal(["load of 1B", "ash"], node.Lines);
        Assert.Null(node.Href);
        Assert.Equal("#B2", drawing.Nodes[1].Href);
        Assert.Equal(["gap 550 µm", "load of B1", "ash"], drawing.Nodes[0].Lines);
        Assert.Equal(1.5, drawing.Edges.First(e => e.From == "B1" && e.Outlet == 1).Weight);
    }

    [Fact]
    public void Json_OfAnyName_EndsNoElementAndIsReadAsItWas()
    {
        const string odd = "</script><!--";
        var json = FlowDrawing.Of(Sheet, lines: _ => [odd]).ToJson();
        Assert.DoesNotContain("<", json, StringComparison.Ordinal);
        Assert.Equal(odd, JsonDocument.Parse(json).RootElement.GetProperty("nodes")[0].GetProperty("lines")[1].GetString());
    }
}
