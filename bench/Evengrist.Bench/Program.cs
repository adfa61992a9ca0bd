using Evengrist.Bench.Genealogy;

return args switch
{
    ["genealogy", .. var rest] => GenealogyBench.Run(rest),
    _ => Usage(),
};

static int Usage()
{
    Console.Error.WriteLine("usage: dotnet run -c Release --project bench/Evengrist.Bench -- genealogy [options]");
    return 2;
}
