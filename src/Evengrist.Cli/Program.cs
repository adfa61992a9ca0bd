using System.Text;
using Evengrist.Cli;
using NodaTime;

Console.OutputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
return new CommandLine(Console.Out, Console.Error, SystemClock.Instance).Run(args);
