using Evengrist.Milling.Learning;
using Evengrist.Milling.OnPaper;
using Evengrist.Milling.Sheet;
using Evengrist.Milling.Suggesting;
using Evengrist.Planning.Milling;
using Evengrist.Tests.Milling;

namespace Evengrist.Planning.Tests.Milling;

/// <summary>Suggested moves on a small invented mill: against all sets there are, and the laws of the question.</summary>
public sealed class SuggestTests
{
    private static readonly string[] Patent = ["1M-flour", "2M-flour", "SZ-flour"];
    private static readonly MoveRules Few = new() { Most = 2, MostSteps = 2, AirStepMetresPerSecond = 0.05 };

    public static TheoryData<WishKind, bool, double?, WishKind, double> Wishes => new()
    {
        { WishKind.Yield, true, 0.3, WishKind.Ash, 0 },
        { WishKind.Yield, true, 0.8, WishKind.Ash, 0.002 },
        { WishKind.Yield, true, null, WishKind.Ash, 0 },
        { WishKind.Yield, true, null, WishKind.Ash, 0.003 },
        { WishKind.Yield, false, 0.5, WishKind.Ash, 0 },
        { WishKind.Ash, false, 0.004, WishKind.Ash, 1 },
        { WishKind.Ash, false, null, WishKind.Ash, 1 },
        { WishKind.Protein, true, 0.01, WishKind.Ash, 0.001 },
        { WishKind.MoneyPerDay, true, null, WishKind.Ash, 0 },
    };

    [Theory]
    [MemberData(nameof(Wishes))]
    public void Suggest_AgainstEverySetThereIs_IsTheBest(WishKind kind, bool raise, double? by, WishKind kept, double most)
    {
        var spec = Ask(new Wish(new WishFigure(kind, kind is WishKind.MoneyPerDay ? [] : Patent), raise, by)) with
        {
            Keep = [new KeptFigure(new WishFigure(kept, Patent)) { MostChange = most }], Sets = 1, PricePerTonne = SmallMill.Sheet.Products.ToDictionary(p => p.Code, p => p.Kind is ProductKind.Flour ? 430m : 200m),
        };
        var mill = new SuggestMill(spec);
        var all = Sets(mill.Choice).Select(s => (Moves: s, Values: mill.At(s)!)).Where(s => s.Values.Index().Skip(1).All(v => Within(mill.Rows[v.Index], v.Item))).ToArray();
        var meet = all.Where(s => Within(mill.Rows[0], s.Values[0])).ToArray();
        var suggested = Assert.IsType<Suggested>(SuggestSolver.Solve(spec));
        var found = suggested.Sets[0];
        Assert.Equal(meet.Length > 0, suggested.Met);
        Assert.Equal(meet.Length > 0, found.Holds);
        if (by is null || meet.Length == 0)
        {
            Assert.Equal(all.Max(s => spec.Wish.Sign * (s.Values[0] - mill.Rows[0].Now)), spec.Wish.Sign * found.Wish.Change, 1e-6);
        }
        else
        {
            // As few moves as can be; of as many, within a hundredth of the least effort.
            var least = meet.MinBy(s => s.Moves.Sum(m => m.Effort));
            Assert.Equal(least.Moves.Length, found.Moves.Count);
            Assert.InRange(found.Moves.Sum(m => m.Move.Effort) / least.Moves.Sum(m => m.Effort), 1 - 1e-9, 1.01);
        }
    }

    // The search is not proven to find the best: here none of two moves does it, and the nearest found goes nine tenths of the way of the best there is.
    [Fact]
    public void Suggest_WhereMovesDoNotAddUp_FallsLittleShortOfTheBest()
    {
        var spec = Ask(new Wish(new WishFigure(WishKind.Protein, Patent), true, 0.02)) with { Keep = [new KeptFigure(new WishFigure(WishKind.Ash, Patent)) { MostChange = 0.001 }], Sets = 1 };
        var mill = new SuggestMill(spec);
        var best = Sets(mill.Choice).Select(s => mill.At(s)!).Where(v => v.Index().Skip(1).All(x => Within(mill.Rows[x.Index], x.Item))).Max(v => v[0] - mill.Rows[0].Now);
        Assert.InRange(Assert.IsType<Suggested>(SuggestSolver.Solve(spec)).Sets[0].Wish.Change / best, 0.9, 1 + 1e-6);
    }

    [Fact]
    public void Set_IsSolvedAsATrialOnPaper_AndItsSharesAreWhatIsLostWithout()
    {
        var spec = Ask(new Wish(new WishFigure(WishKind.Yield, Patent), true, null)) with { Rules = Few with { ClothsOnHand = [118, 150], FlowStepPercent = 2 } };
        var mill = new SuggestMill(spec);
        Move[] moves = [Of(MoveKind.Gap), Of(MoveKind.Air), Of(MoveKind.Cloth), Of(MoveKind.Flow)];
        var set = SuggestedSet.Of(mill, moves);
        var change = MillChange.Of(
            spec.Sheet, Move.Change(moves).Apply(spec.Sheet), spec.Wheat, spec.Wheat with { DryTonnesPerHour = spec.Wheat.DryTonnesPerHour * Move.FlowFactor(moves) }, spec.Tuning, [new ProductSet("patent", Patent)]);
        Assert.Equal(change.Products[^1].YieldPercent.Value, set.Wish.Change, 1e-6);
        Assert.Equal(change.Products[^1].YieldPercent.Uncertainty, set.Wish.Uncertainty!.Value, 1e-6);
        Assert.All(set.Moves, m => Assert.Equal(mill.At(moves)![0] - mill.At([.. moves.Where(o => o != m.Move)])![0], m.Share, 1e-7));

        Move Of(MoveKind kind) => mill.Choice.First(m => m.Kind == kind);
    }

    [Fact]
    public void Choice_StaysWithinWhatTheMachinesAndTheRulesAllow()
    {
        var rules = new MoveRules { LeastGapMicrometres = 45, MostGapMicrometres = 510, GapStepMicrometres = 5, ClothsOnHand = [280, 320, 125, 900], Leave = ["2B"], FlowStepPercent = 1, MostLoadRisePercent = 3 };
        var spec = Ask(new Wish(new WishFigure(WishKind.Yield, []), true, null)) with { Rules = rules };
        var choice = new SuggestMill(spec).Choice;
        Assert.DoesNotContain(choice, m => m.Passage == "2B");
        Assert.All(choice.Where(m => m.Kind is MoveKind.Gap), m =>
        {
            Assert.InRange(m.To, 45, 510);
            Assert.Equal(0, Math.IEEERemainder(m.To - m.From, 5), 1e-9);
            Assert.InRange(Math.Abs(m.To - m.From), 5, Math.Max(5, 0.2 * m.From));
        });
        Assert.All(choice.Where(m => m.Kind is MoveKind.Cloth), m => Assert.InRange(m.To / m.From, 0.75, 1.25));
        Assert.Contains(choice, m => m.Kind is MoveKind.Cloth);
        Assert.All(choice.Where(m => m.Kind is MoveKind.Air), m => Assert.InRange(m.To, 0.2, 3));
        var set = Assert.IsType<Suggested>(SuggestSolver.Solve(spec with { Sets = 3 })).Sets;
        Assert.All(set, s =>
        {
            Assert.InRange(s.Moves.Count, 1, 3);
            Assert.Equal(s.Moves.Count, s.Moves.Select(m => m.Move.Lever).Distinct().Count());
            Assert.All(s.Change.Then.Passages.Zip(s.Change.Now.Passages), p => Assert.InRange(p.First.DryTonnesPerHour.Value, 0, (1.03 * p.Second.DryTonnesPerHour.Value) + 1e-6));
        });
        Assert.Equal(set.Count, set.Select(s => string.Join('|', s.Moves.Select(m => m.Move.Lever).Order())).Distinct().Count());
    }

    [Fact]
    public void Wish_ThatCannotBeMet_SaysSo_AndShowsAsFarAsItGoes()
    {
        KeptFigure[] keep = [new KeptFigure(new WishFigure(WishKind.Ash, Patent)) { MostChange = 0 }];
        var spec = Ask(new Wish(new WishFigure(WishKind.Yield, Patent), true, 20)) with { Keep = keep };
        var (short20, furthest) = (Assert.IsType<Suggested>(SuggestSolver.Solve(spec)), Assert.IsType<Suggested>(SuggestSolver.Solve(spec with { Wish = spec.Wish with { By = null } })));
        Assert.False(short20.Met);
        Assert.Contains("does all that is wished", short20.Words, StringComparison.Ordinal);
        Assert.True(furthest.Met);
        Assert.Equal(furthest.Sets[0].Wish.Change, short20.Sets[0].Wish.Change, 1e-9);
        Assert.InRange(short20.Sets[0].Wish.Chance!.Value, 0, 1e-3);

        // Ash of half of what it is: no bound can be kept, the nearest is shown.
        var ash = new SuggestMill(spec).Rows[1].Now;
        var broken = Assert.IsType<Suggested>(SuggestSolver.Solve(spec with { Keep = [new KeptFigure(new WishFigure(WishKind.Ash, Patent)) { Most = ash / 2 }] }));
        Assert.False(broken.Met);
        Assert.Contains("keeps every bound", broken.Words, StringComparison.Ordinal);
        Assert.True(broken.Sets[0].Keeps[0].Change < 0 && !broken.Sets[0].Keeps[0].Holds);

        // Neither more nor less load anywhere and yield fixed: nothing to gain.
        var none = Assert.IsType<Suggested>(SuggestSolver.Solve(spec with { Keep = [new KeptFigure(new WishFigure(WishKind.Yield, Patent)) { MostChange = 0 }] }));
        Assert.Empty(none.Sets);
        Assert.Contains("loosen a bound", none.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void Chance_AskedFor_HoldsForChanges_AndLeavesBoundsOnTheFigureItselfToTheMean()
    {
        var ash = new WishFigure(WishKind.Ash, Patent);
        var spec = Ask(new Wish(new WishFigure(WishKind.Yield, Patent), true, 0.3)) with { Keep = [new KeptFigure(ash) { MostChange = 0.004 }] };
        var (mean, sure) = (Assert.IsType<Suggested>(SuggestSolver.Solve(spec)), Assert.IsType<Suggested>(SuggestSolver.Solve(spec with { Sure = 0.9 })));
        Assert.True(sure.Met);
        Assert.All([sure.Sets[0].Wish, .. sure.Sets[0].Keeps], b => Assert.InRange(b.Chance!.Value, 0.899, 1));
        Assert.True(mean.Sets[0].Moves.Sum(m => m.Move.Effort) <= sure.Sets[0].Moves.Sum(m => m.Move.Effort));

        var now = new SuggestMill(spec).Rows[1].Now;
        var itself = Assert.IsType<Suggested>(SuggestSolver.Solve(spec with { Sure = 0.9, Keep = [new KeptFigure(ash) { Most = now + 0.004 }] }));
        Assert.True(itself.Met && itself.Sets[0].Keeps[0].Holds);
        Assert.InRange(itself.Sets[0].Keeps[0].Chance!.Value, 0, 0.85); // The ± of ash itself is far wider than that of its change.
    }

    [Fact]
    public void Question_AskedTwice_IsAnsweredAlike()
    {
        var spec = Ask(new Wish(new WishFigure(WishKind.Yield, Patent), true, 0.5)) with { Keep = [new KeptFigure(new WishFigure(WishKind.Ash, [])) { MostChange = 0.002 }] };
        Assert.Equal(Words(), Words());

        string Words() => string.Join('|', Assert.IsType<Suggested>(SuggestSolver.Solve(spec)).Sets.Select(s => string.Join(';', s.Moves.Select(m => m.Move.Words))));
    }

    [Fact]
    public void Question_ThatCannotBeAsked_SaysWhatToDo()
    {
        var wish = new Wish(new WishFigure(WishKind.Yield, Patent), true, 0.3);
        var spec = Ask(wish);
        Says(spec with { Wish = wish with { By = -1 } }, "an amount above 0");
        Says(spec with { Wish = wish with { By = double.NaN } }, "an amount above 0");
        Says(spec with { Wish = wish with { Figure = new WishFigure(WishKind.None, []) } }, "Say which figure is meant");
        Says(spec with { Wish = wish with { Figure = new WishFigure(WishKind.Ash, ["9M"]) } }, "There is no product 9M");
        Says(spec with { Wish = wish with { Figure = new WishFigure(WishKind.Ash, ["1M-flour", "1M-flour"]) } }, "named 2 times");
        Says(spec with { Wish = wish with { Figure = new WishFigure(WishKind.Load, []) } }, "one passage: name it");
        Says(spec with { Wish = wish with { Figure = new WishFigure(WishKind.MoneyPerDay, []) } }, "needs the price");
        Says(spec with { Keep = [new KeptFigure(wish.Figure)] }, "a bound, or leave it out");
        Says(spec with { Keep = [new KeptFigure(wish.Figure) { MostChange = 0, Most = 3 }] }, "not both at once");
        Says(spec with { Keep = [new KeptFigure(wish.Figure) { LeastChange = 1, MostChange = 0 }] }, "turn them round");
        Says(spec with { Rules = Few with { Most = 0 } }, "1 to 6 moves");
        Says(spec with { Rules = Few with { GapStepMicrometres = double.NaN } }, "step of a gap");
        Says(spec with { Rules = Few with { Leave = ["9B"] } }, "no passage 9B");
        Says(spec with { Rules = Few with { AirStepMetresPerSecond = 0, Leave = [.. SmallMill.Sheet.Passages.Select(p => p.Code)] } }, "Nothing may be moved");
        Says(spec with { Sure = 0.4 }, "above 50 %");
        Says(spec with { Sets = 9 }, "1 to 5 sets");
        Says(
            spec with { Rules = Few with { FlowStepPercent = 1 }, Wish = new Wish(new WishFigure(WishKind.MoneyPerDay, []), true, null), PricePerTonne = new Dictionary<string, decimal> { ["1M-flour"] = 430 } },
            "not what the wheat costs");

        static void Says(SuggestSpec spec, string words) => Assert.Contains(Assert.IsType<SuggestRefused>(SuggestSolver.Solve(spec)).Reasons, r => r.Contains(words, StringComparison.Ordinal));
    }

    private static SuggestSpec Ask(Wish wish) => new(SmallMill.Sheet, SmallMill.Wheat, MillTuning.None(SmallMill.Sheet), wish) { Rules = Few };

    private static bool Within(SuggestRow row, double value) => value >= row.Least - (1e-7 * Math.Abs(row.Now)) && value <= row.Most + (1e-7 * Math.Abs(row.Now));

    private static IEnumerable<Move[]> Sets(IReadOnlyList<Move> choice) =>
        [.. choice.Select(m => (Move[])[m]), .. choice.SelectMany((m, i) => choice.Take(i).Where(o => o.Lever != m.Lever).Select(o => (Move[])[o, m]))];
}
