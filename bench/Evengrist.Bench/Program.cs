using Evengrist.Bench.Desk;
using Evengrist.Bench.Genealogy;
using Evengrist.Bench.Laboratory;
using Evengrist.Bench.Milling;
using Evengrist.Bench.Mix;
using Evengrist.Bench.Recall;
using Evengrist.Bench.Records;
using Evengrist.Bench.Season;
using Evengrist.Bench.Season.Backtest;
using Evengrist.Bench.Streams;
using Evengrist.Bench.Year;

return args switch
{
    ["genealogy", .. var rest] => GenealogyBench.Run(rest),
    ["records"] => RecordsBench.Run(),
    ["year"] => YearBench.Run(),
    ["recall"] => RecallBench.Run(),
    ["season", .. var rest] => SeasonBench.Run(rest),
    ["promise", .. var rest] => PromiseBench.Run(rest),
    ["mix"] => MixBench.Run(),
    ["mill"] => MillBench.Run(),
    ["divide"] => DivideBench.Run(),
    ["backtest", .. var rest] => BacktestBench.Run(rest),
    ["pls", .. var rest] => PlsBench.Run(rest),
    ["desk"] => await DeskBench.RunAsync(),
    _ => Usage(),
};

static int Usage()
{
    Console.Error.WriteLine("usage: dotnet run -c Release --project bench/Evengrist.Bench -- genealogy [options] | records | year | recall | season | promise | mix | mill | divide | backtest | pls | desk");
    return 2;
}
