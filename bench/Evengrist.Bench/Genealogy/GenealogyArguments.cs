using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using Evengrist.Bench.Genealogy.Graph;

namespace Evengrist.Bench.Genealogy;

/// <summary>What the genealogy bench was asked to do.</summary>
/// <param name="Spec">The crop year to generate.</param>
/// <param name="CheckOnly">Print check values and answers, time nothing.</param>
/// <param name="Budget">Seconds each part of each database may take.</param>
internal sealed record GenealogyArguments(GenealogySpec Spec, bool CheckOnly, int Budget)
{
    public const string Usage =
        "usage: genealogy [--scale 1.0] [--seed 20250701] [--bins 19] [--budget SECONDS, 60] [--check]";

    public static bool TryRead(string[] args, [NotNullWhen(true)] out GenealogyArguments? read, [NotNullWhen(false)] out string? fault)
    {
        var spec = new GenealogySpec();
        var (check, budget) = (false, 60);
        (read, fault) = (null, null);
        for (var i = 0; i < args.Length && fault is null; i++)
        {
            var name = args[i];
            if (name == "--check")
            {
                check = true;
                continue;
            }

            var text = ++i < args.Length ? args[i] : "";
            var culture = CultureInfo.InvariantCulture;
            if (name == "--scale" && double.TryParse(text, NumberStyles.Float, culture, out var scale))
            {
                spec = spec with { Scale = scale };
            }
            else if (name == "--seed" && ulong.TryParse(text, NumberStyles.None, culture, out var seed))
            {
                spec = spec with { Seed = seed };
            }
            else if (name == "--bins" && int.TryParse(text, NumberStyles.None, culture, out var bins))
            {
                spec = spec with { Bins = bins };
            }
            else if (name == "--budget" && int.TryParse(text, NumberStyles.None, culture, out var seconds) && seconds > 0)
            {
                budget = seconds;
            }
            else
            {
                fault = $"cannot read {name} {text}".TrimEnd();
            }
        }

        fault ??= spec.Fault;
        read = fault is null ? new GenealogyArguments(spec, check, budget) : null;
        return read is not null;
    }
}
