using CsCheck;
using Evengrist.Cli;
using Evengrist.Edge.Tests.Plant;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;

namespace Evengrist.Edge.Tests.Cli;

/// <summary>Posed cases that are not right: each fault at its JSON path, exit status 2, nothing on standard output.</summary>
public sealed class BadCaseTests
{
    [Theory]
    [InlineData("bins outflow", """{ "layers": [ { "lot": "A", "t": -5 } ], "steps": [] }""", "$.layers[0].t: read \"-5\"; expected a number from")]
    [InlineData("bins outflow", """{ "layers": [ { "lot": "A", "t": 1e308 } ], "steps": [] }""", "$.layers[0].t: read \"1e308\"")]
    [InlineData("bins outflow", """{ "layers": [ { "lot": "A" } ], "steps": [] }""", "$.layers[0]: read \"an object\"; expected a mass: one of t and kg")]
    [InlineData("bins outflow", """{ "layers": [ { "lot": "A", "t": 5 } ], "steps": [ { "draw": { "t": 6 } } ] }""", "$.steps[0].draw: read \"6,000 kg\"; expected at most what lies in the bin, 5,000 kg")]
    [InlineData("bins outflow", """{ "layers": [], "stepz": [] }""", "$.stepz: read \"stepz\"; expected a known member; the nearest is steps")]
    [InlineData("bins outflow", """{ "layers": [], "layers": [], "steps": [] }""", "something that is no JSON")]
    [InlineData("bins outflow", """{ "layers": [], "steps": [], "hypotheses": [ "guess" ] }""", "$.hypotheses[0]: read \"guess\"; expected a hypothesis")]
    [InlineData("bins outflow", "{ \"layers\": [\n  oops", "line 2, column 3")]
    [InlineData("bins outflow", "[]", "$: read \"a list\"; expected an object")]
    [InlineData("intake settle", """{ "gross": { "kg": 9000 }, "tare": { "kg": 24000 }, "on": "2025-07-09", "findings": {}, "contract": {} }""", "$.tare: read \"an object\"; expected weights that can be. The tare of 24,000 kg is above the gross")]
    [InlineData("intake settle", """{ "gross": { "kg": 24000 }, "tare": { "kg": 9000 }, "on": "2025-02-31", "findings": { "protein [%]": 13.1 }, "contract": {} }""", "$.findings.protein [%]: read \"13.1\"; expected the finding written protein [% 12mb]")]
    [InlineData("intake edge", """{ "reads": 13, "sd": 0.2, "edges": [] }""", "$.edges: read \"a list\"; expected at least one edge, a number")]
    [InlineData("intake test", """{ "test": "fallingNumber", "limit": 300, "load": { "t": 26 }, "prior": { "mean": 26, "sd": 6 }, "minutes": 8, "costPerMinute": 1 }""", "expected at least one of wrongBinPerTonne, claim, discountPerTonne")]
    [InlineData("intake test", """{ "test": "fallingNumber", "limit": 300, "load": { "t": 26 }, "prior": { "mean": 26, "sd": 6 }, "claim": 900, "minutes": 8 }""", "$.costPerMinute: read nothing; expected a value; the member is missing")]
    [InlineData("intake probe", """{ "rule": "us-flat-bottom", "vehicle": "hopperBottom", "load": { "t": 26 }, "depthM": 1.8 }""", "expected a question that can be answered. The rule")]
    [InlineData("intake decide", """{ "findings": { "moisture [%]": 13 }, "house": { "rules": [ { "what": "FallingNumber", "unit": "s", "kind": "Burn", "below": 250, "why": "x" } ] } }""", "rules[0].kind (line 1): write one of Accept, Discount, Divert, SetAside, TurnAway")]
    [InlineData("intake settle", """{ "gross": { "kg": 24000 }, "tare": { "kg": 9000 }, "on": "2025-07-09", "findings": {}, "contract": { "code": "A", "version": 1, "base": { "amount": 6, "currency": "dollar", "per": "Bushel" }, "deductDockage": true, "dryMatterShrink": true, "baseMoisture": 13.5 } }""", "\"dollar\" is not a currency: write three capital letters, for example USD.\n")]
    [InlineData("tracing reach", """{ "places": [ { "code": "F", "kind": "field" } ], "movements": [ { "from": "F", "to": "X", "t": 1, "at": "2025-07-01T08:00Z" } ], "question": { "code": "F" } }""", "$.movements[0]: read \"X\"; expected what the ledger can take. There is no place")]
    [InlineData("tracing reach", """{ "places": [ { "code": "F", "kind": "silo" } ], "movements": [], "question": { "code": "F" } }""", "$.places[0].kind: read \"silo\"; expected a kind of place")]
    [InlineData("tracing reach", """{ "places": [], "movements": [ { "from": "F", "to": "X{n}", "t": 1, "at": "2025-07-01 08:00", "every": "PT0S", "count": 999999 } ], "question": { "code": "F" } }""", "$.movements[0].count: read \"999999\"")]
    [InlineData("tracing roots", """{ "places": [], "movements": [], "beliefs": { "stirred": 0 }, "question": { "code": "F" } }""", "$.beliefs: read \"an object\"; expected at least one hypothesis with a weight above 0")]
    [InlineData("tracing recall", """{ "places": [], "movements": [], "suspect": [ { "code": "NOWHERE" } ] }""", "$.suspect[0].code: read \"NOWHERE\"; expected the code of a place of the case")]
    [InlineData("tracing recall", """{ "places": [ { "code": "B", "kind": "bin" } ], "movements": [], "suspect": [ { "code": "B" } ] }""", "$.suspect[0].code: read \"B\"; expected hours")]
    [InlineData("tracing recall", """{ "places": [], "movements": [], "suspect": [] }""", "expected at least one thing that is suspect")]
    [InlineData("tracing roots", """{ "places": [], "movements": [], "question": { "code": "NOWHERE" } }""", "$.question.code: read \"NOWHERE\"; expected the code of a place of the case")]
    public void Run_BadCase_SaysWhatAndWhere(string verb, string text, string said)
    {
        using var folder = new Folder();
        var (status, output, error) = Shell.Run([.. verb.Split(' '), "--in", folder.File("case.json", text), "--json"]);
        Assert.Equal((Exit.BadInput, ""), (status, output));
        Assert.Contains(said, error, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_TraceThatHasNothingToFollow_HasNoAnswer()
    {
        using var folder = new Folder();
        var (status, output, error) = Shell.Run("tracing", "reach", "--in", folder.File("case.json", """{ "places": [ { "code": "F", "kind": "field" } ], "movements": [], "question": { "code": "F" } }"""));
        Assert.Equal((Exit.NoAnswer, "", "Nothing has left F by then.\n"), (status, output, error));
    }

    [Fact]
    public void Read_GoodCaseDamaged_GivesAnAnswerOrFaultsAndNeverThrows()
    {
        var cases = new[] { "outflow-three-layers.json", "roots-bag.json", "settle.json", "grade-weighings.json" }.Select(f => File.ReadAllBytes(Repository.Sample("cases", f))).ToArray();
        Gen.Select(Gen.Int[0, cases.Length - 1], Gen.Select(Gen.Double[0, 1], Gen.Byte, Gen.Bool).Array[1, 4]).Sample((which, damages) =>
        {
            var bytes = cases[which].ToList();
            foreach (var (where, value, insert) in damages)
            {
                var at = (int)(where * (bytes.Count - 1));
                if (insert)
                {
                    bytes.Insert(at, value);
                }
                else
                {
                    bytes[at] = value;
                }
            }

            using var stream = new MemoryStream(bytes.ToArray());
            return which switch
            {
                0 => OutflowCase.Read(stream).Then(OutflowAnswer.To) is { } a && a.Ok == (a.Faults.Count == 0),
                1 => TraceCase.Read(stream).Then(TraceAnswer.Roots) is { } a && a.Ok == (a.Faults.Count == 0),
                2 => SettlementCase.Read(stream) is { } a && a.Ok == (a.Faults.Count == 0),
                _ => GradeCase.Read(stream) is { } a && a.Ok == (a.Faults.Count == 0),
            };
        }, iter: 1500);
    }

    [Fact]
    public void Read_AnyBytes_GivesFaultsAndNeverThrows() =>
        Gen.Byte.Array[0, 200].Sample(bytes => !TraceCase.Read(new MemoryStream(bytes)).Ok, iter: 1000);
}
