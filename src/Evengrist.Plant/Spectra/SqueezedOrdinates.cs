using System.Globalization;
using Evengrist.Laboratory.Calibration;

namespace Evengrist.Plant.Spectra;

/// <summary>The table of ordinates of a JCAMP-DX block, in plain numbers or squeezed, in any mixture: PAC, SQZ, DIF, DUP.</summary>
/// <remarks>McDonald and Wilks, Applied Spectroscopy 42 (1988) 151: pseudo-digits stand for sign, separator and first digit of a value (@, A to I, a to i), of a difference (%, J to R, j to r) or of how often the last goes on (S to Z, s). After a line of differences the next one repeats its last value as a check.</remarks>
internal sealed class SqueezedOrdinates(List<Fault> faults)
{
    private double? difference;
    private bool checkNext;

    /// <summary>Ordinates so far, as written.</summary>
    public List<double> Values { get; } = [];

    /// <summary>Of each line the abscissa it begins with, as written, and the number of the ordinate, from 0, that it belongs to.</summary>
    public List<(int Line, double At, int Ordinate)> Marks { get; } = [];

    public void Line(int line, string text)
    {
        var (at, first) = (0, true);
        (checkNext, difference) = (difference is not null && Values.Count > 0, null);
        Marks.Add((line, 0, checkNext ? Values.Count - 1 : Values.Count));
        while (at < text.Length && !text.AsSpan(at).StartsWith("$$"))
        {
            var start = at;
            var c = text[at];
            if (char.IsWhiteSpace(c) || c is ',' or ';')
            {
                at++;
                continue;
            }

            var (kind, digit) = Kind(c);
            if (kind is Digit.None || (first && kind is not Digit.Plain) || Number(text, ref at, kind, digit) is not { } number)
            {
                faults.Add(new Fault(line, start + 1, "XYDATA", Fault.Show(text[start..]), first ? "the abscissa of the line first, as a plain number" : c == '?' ? "a value: the point is marked as missing, and a spectrum with a gap is not read" : "a number or one of the pseudo-digits of the standard"));
                return;
            }

            if (first)
            {
                (first, Marks[^1]) = (false, Marks[^1] with { At = number });
            }
            else if (!Take(line, start, kind, number))
            {
                return;
            }
        }
    }

    private bool Take(int line, int start, Digit kind, double number)
    {
        if (kind is Digit.Repeat)
        {
            if (Values.Count == 0 || number < 1 || Values.Count + number > SpectralAxis.Most)
            {
                faults.Add(new Fault(line, start + 1, "XYDATA", number.ToString(CultureInfo.InvariantCulture), $"how often the value before goes on, in a spectrum of up to {SpectralAxis.Most} points"));
                return false;
            }

            for (var again = 1; again < number; again++)
            {
                Values.Add(Values[^1] + (difference ?? 0));
            }
        }
        else if (kind is Digit.Difference)
        {
            if (Values.Count == 0)
            {
                faults.Add(new Fault(line, start + 1, "XYDATA", "a difference", "a value before the first difference"));
                return false;
            }

            (difference, checkNext) = (number, false);
            Values.Add(Values[^1] + number);
        }
        else if (checkNext)
        {
            checkNext = false;
            if (number != Values[^1])
            {
                faults.Add(new Fault(line, start + 1, "XYDATA", number.ToString(CultureInfo.InvariantCulture), string.Create(CultureInfo.InvariantCulture, $"the last value of the line above again, {Values[^1]}, as a check: a line is damaged or missing")));
                return false;
            }
        }
        else
        {
            difference = null;
            Values.Add(number);
        }

        return Values.Count <= SpectralAxis.Most;
    }

    private static (Digit, int) Kind(char c) => c switch
    {
        >= '0' and <= '9' or '+' or '-' or '.' => (Digit.Plain, 0),
        '@' => (Digit.Value, 0),
        >= 'A' and <= 'I' => (Digit.Value, c - 'A' + 1),
        >= 'a' and <= 'i' => (Digit.Value, -(c - 'a' + 1)),
        '%' => (Digit.Difference, 0),
        >= 'J' and <= 'R' => (Digit.Difference, c - 'J' + 1),
        >= 'j' and <= 'r' => (Digit.Difference, -(c - 'j' + 1)),
        >= 'S' and <= 'Z' => (Digit.Repeat, c - 'S' + 1),
        's' => (Digit.Repeat, 9),
        _ => (Digit.None, 0),
    };

    private static double? Number(string text, ref int at, Digit kind, int digit)
    {
        var start = at++;
        while (at < text.Length && (char.IsAsciiDigit(text[at]) || text[at] == '.'))
        {
            at++;
        }

        // E is a pseudo-digit too; the standard makes it an exponent where a sign and two or three digits follow a plain number.
        if (kind is Digit.Plain && at + 2 < text.Length && text[at] is 'E' or 'e' && text[at + 1] is '+' or '-' && char.IsAsciiDigit(text[at + 2]))
        {
            for (at += 3; at < text.Length && char.IsAsciiDigit(text[at]); at++)
            {
            }
        }

        var written = kind is Digit.Plain ? text[start..at] : digit.ToString(CultureInfo.InvariantCulture) + text[(start + 1)..at];
        return double.TryParse(written, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && double.IsFinite(number) ? number : null;
    }

    private enum Digit
    {
        None,
        Plain,
        Value,
        Difference,
        Repeat,
    }
}
