using Evengrist.Bench.Genealogy;
using Evengrist.Bench.Records;

return args switch
{
    ["genealogy", .. var rest] => GenealogyBench.Run(rest),
    ["records"] => RecordsBench.Run(),
    _ => Usage(),
};

static int Usage()
{
    Console.Error.WriteLine("usage: dotnet run -c Release --project bench/Evengrist.Bench -- genealogy [options] | records");
    return 2;
}
