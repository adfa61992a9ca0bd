using System.CommandLine;
using System.Globalization;
using System.Numerics;
using Evengrist.Plant;

namespace Evengrist.Cli;

/// <summary>An option that takes a whole number and says in plain words what it read where it is none.</summary>
internal static class NumberOption
{
    public static Option<T?> Whole<T>(string name, string says)
        where T : struct, IBinaryInteger<T> => new(name)
        {
            Description = says,
            HelpName = "NUMBER",
            CustomParser = given =>
            {
                var text = given.Tokens.Count == 1 ? given.Tokens[0].Value : "";
                if (T.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number))
                {
                    return number;
                }

                given.AddError($"{name}: a whole number is needed; read \"{Fault.Show(text)}\".");
                return null;
            },
        };
}
