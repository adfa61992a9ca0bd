using Evengrist.Web.Start;

return await EvengristProgram.RunAsync(args, Console.Out, Console.Error);
