namespace Evengrist.Plant.Prints.Labels;

/// <summary>Whether the words of a label can be printed.</summary>
internal static class LabelText
{
    private const int Longest = 80;

    public static Parsed<LabelCase> Checked(LabelCase label, int year)
    {
        var faults = new List<Fault>();
        foreach (var (name, text) in label.Contains.Select(c => ("$.contains", c)).Prepend(("$.flour", label.Flour)).Prepend(("$.mill", label.Mill)))
        {
            if (string.IsNullOrWhiteSpace(text) || text.Length > Longest || text.Any(c => char.IsControl(c) || char.IsSurrogate(c) || c is '\ufffe' or '\uffff'))
            {
                faults.Add(Fault.AtPath(name, text, FormattableString.Invariant($"1 to {Longest} characters that can be printed")));
            }
        }

        if (label.NetKilograms <= 0 || label.NetKilograms >= 1000 || decimal.Round(label.NetKilograms, 3) != label.NetKilograms)
        {
            faults.Add(Fault.AtPath("$.netKilograms", FormattableString.Invariant($"{label.NetKilograms}"), "more than 0 and less than 1000 kg in whole grams"));
        }

        if (Math.Abs(label.BestBefore.Year - year) > 20)
        {
            faults.Add(Fault.AtPath("$.bestBefore", label.BestBefore.ToString("uuuu-MM-dd", System.Globalization.CultureInfo.InvariantCulture), "a year within twenty of this one: a symbol carries two digits of it"));
        }

        return faults.Count > 0 ? Parsing.Failed<LabelCase>(faults) : Parsing.Got(label);
    }
}
