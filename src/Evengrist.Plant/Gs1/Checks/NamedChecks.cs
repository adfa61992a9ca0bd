using System.Globalization;
using Evengrist.Packing.Codes;

namespace Evengrist.Plant.Gs1.Checks;

/// <summary>Every check of the table. The rules are those of GS1's reference tests (Apache-2.0, see docs/decisions/0016-application-identifiers.md); the code is our own.</summary>
public static class NamedChecks
{
    /// <summary>The last digit is the check digit.</summary>
    public static readonly PartCheck DigitCheck = new("csum", (part, _) =>
        CheckDigit.IsRight(part) ? null : part.Length == 0 ? "digits" : $"check digit {CheckDigit.Of(part.AsSpan(0, part.Length - 1))} at the end, not {part[^1]}; read it again");

    /// <summary>The last two characters are the check pair.</summary>
    public static readonly PartCheck PairCheck = new("csumalpha", (part, _) => CheckPair.Expected(part));

    /// <summary>Begins with a company prefix: at least four digits. Whether it is lent is not asked.</summary>
    public static readonly PartCheck PrefixFirst = new("gcppos1", "a company prefix first, at least four digits", part => BeginsWithPrefix(part, 0));

    /// <summary>A company prefix from the second character on.</summary>
    public static readonly PartCheck PrefixSecond = new("gcppos2", "a company prefix from the second digit on", part => BeginsWithPrefix(part, 1));

    /// <summary>A date, or a month with the day 00.</summary>
    public static readonly PartCheck DateOrMonth = new("yymmd0", (part, year) => SymbolDate.Expected(part, year, monthAlone: true));

    /// <summary>A date.</summary>
    public static readonly PartCheck Date = new("yymmdd", (part, year) => SymbolDate.Expected(part, year, monthAlone: false));

    /// <summary>A date with all digits of its year.</summary>
    public static readonly PartCheck FullDate = new("yyyymmdd", (part, _) => SymbolDate.ExpectedFull(part));

    /// <summary>Hour and minute.</summary>
    public static readonly PartCheck HourAndMinute = new("hhmi", "a time from 0000 to 2359", part => part.Length == 4 && Within(part[..2], 0, 23) && Within(part[2..], 0, 59));

    /// <summary>An hour.</summary>
    public static readonly PartCheck Hour = new("hh", "an hour from 00 to 23", part => Within(part, 0, 23));

    /// <summary>A minute.</summary>
    public static readonly PartCheck Minute = new("mi", "a minute from 00 to 59", part => Within(part, 0, 59));

    /// <summary>A second.</summary>
    public static readonly PartCheck Second = new("ss", "a second from 00 to 59", part => Within(part, 0, 59));

    /// <summary>A country by its three digits.</summary>
    public static readonly PartCheck Country = new("iso3166", "a country by the three digits of ISO 3166, such as 840", Countries.IsNumber);

    /// <summary>A country by its three digits, or 999.</summary>
    public static readonly PartCheck CountryOr999 = new("iso3166999", "a country by the three digits of ISO 3166, or 999 for several", part => part == "999" || Countries.IsNumber(part));

    /// <summary>A country by its two letters.</summary>
    public static readonly PartCheck CountryLetters = new("iso3166alpha2", "a country by the two capitals of ISO 3166, such as US", Countries.IsLetters);

    /// <summary>A currency by its three digits.</summary>
    public static readonly PartCheck Currency = new("iso4217", "a currency by the three digits of ISO 4217, such as 840", Currencies.IsNumber);

    /// <summary>A sex by ISO/IEC 5218.</summary>
    public static readonly PartCheck Sex = new("iso5218", "0, 1, 2 or 9", part => part is "0" or "1" or "2" or "9");

    /// <summary>Percent signs stand before two hexadecimal digits.</summary>
    public static readonly PartCheck PercentWritten = new("pcenc", "two of 0 to 9 and A to F behind each % sign", PercentSignsHold);

    /// <summary>Ten millionths of a degree, from the south pole.</summary>
    public static readonly PartCheck Latitude = new("latitude", "a latitude from 0000000000 (south pole) to 1800000000", part => Within(part, 0, 1_800_000_000));

    /// <summary>Ten millionths of a degree, eastward.</summary>
    public static readonly PartCheck Longitude = new("longitude", "a longitude from 0000000000 to 3600000000", part => Within(part, 0, 3_600_000_000));

    /// <summary>Hyphens alone.</summary>
    public static readonly PartCheck Hyphens = new("hyphen", "a hyphen, for a value below zero, or nothing", part => part.Length > 0 && part.All(c => c == '-'));

    /// <summary>An importer's index of EU 2018/574.</summary>
    public static readonly PartCheck ImporterIndex = new("importeridx", "one letter, digit, - or _", part => part.Length == 1 && (char.IsAsciiLetterOrDigit(part[0]) || part[0] is '-' or '_'));

    /// <summary>A kind of medium.</summary>
    public static readonly PartCheck MediaType = new("mediatype", "a medium from 01 to 10 or from 80 to 99", part => Within(part, 1, 10) || Within(part, 80, 99));

    /// <summary>Not zero.</summary>
    public static readonly PartCheck NotZero = new("nonzero", "a number above zero", part => part.Any(c => c != '0'));

    /// <summary>No nought before other digits.</summary>
    public static readonly PartCheck NoZeroBefore = new("nozeroprefix", "a number without noughts before it", part => part.Length <= 1 || part[0] != '0');

    /// <summary>Zero.</summary>
    public static readonly PartCheck Zero = new("zero", "0", part => part.Length > 0 && part.All(c => c == '0'));

    /// <summary>How a roll is wound.</summary>
    public static readonly PartCheck Winding = new("winding", "0 (face out), 1 (face in) or 9", part => part is "0" or "1" or "9");

    /// <summary>Yes or no.</summary>
    public static readonly PartCheck YesOrNo = new("yesno", "0 or 1", part => part is "0" or "1");

    /// <summary>A kind of package.</summary>
    public static readonly PartCheck PackageType = new("packagetype", "a package code of UN/ECE Recommendation 21, such as BG for a bag", Packages.IsCode);

    /// <summary>Which piece of how many.</summary>
    public static readonly PartCheck PieceOfTotal = new("pieceoftotal", "piece and total of equal length, from 1, piece at most total", PieceHolds);

    /// <summary>Which of how many, with a stroke.</summary>
    public static readonly PartCheck PlaceInOrder = new("posinseqslash", "a place and a total such as 1/2, from 1, without noughts before", PlaceHolds);

    /// <summary>An international bank account number.</summary>
    public static readonly PartCheck BankAccount = new("iban", (part, _) => Iban.Expected(part));

    /// <summary>A coupon code of North America.</summary>
    public static readonly PartCheck CouponCode = new("couponcode", Coupon.ExpectedCode);

    /// <summary>A coupon from an offer file.</summary>
    public static readonly PartCheck CouponOffer = new("couponposoffer", (part, _) => Coupon.ExpectedOffer(part));

    /// <summary>Not digits alone.</summary>
    public static readonly PartCheck NotDigitsAlone = new("hasnondigit", "a character that is no digit", part => part.Any(c => !char.IsAsciiDigit(c)));

    /// <summary>All of them.</summary>
    public static IReadOnlyList<PartCheck> All { get; } =
    [
        DigitCheck, PairCheck, PrefixFirst, PrefixSecond, DateOrMonth, Date, FullDate, HourAndMinute, Hour, Minute, Second, Country, CountryOr999, CountryLetters, Currency, Sex, PercentWritten, Latitude, Longitude,
        Hyphens, ImporterIndex, MediaType, NotZero, NoZeroBefore, Zero, Winding, YesOrNo, PackageType, PieceOfTotal, PlaceInOrder, BankAccount, CouponCode, CouponOffer, NotDigitsAlone,
    ];

    internal static bool BeginsWithPrefix(string part, int from) => part.Length >= from + 4 && part.AsSpan(from, 4).IndexOfAnyExceptInRange('0', '9') < 0;

    internal static bool Within(string part, long least, long most) =>
        long.TryParse(part, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number >= least && number <= most;

    private static bool PercentSignsHold(string part)
    {
        for (var at = part.IndexOf('%', StringComparison.Ordinal); at >= 0; at = part.IndexOf('%', at + 3))
        {
            if (at + 2 >= part.Length || !char.IsAsciiHexDigit(part[at + 1]) || !char.IsAsciiHexDigit(part[at + 2]))
            {
                return false;
            }

            if (at + 3 >= part.Length)
            {
                return true;
            }
        }

        return true;
    }

    private static bool PieceHolds(string part)
    {
        var half = part.Length / 2;
        var (piece, total) = (part[..half], part[half..]);
        return part.Length > 0 && part.Length % 2 == 0 && part.All(char.IsAsciiDigit) && NotAllNoughts(piece) && NotAllNoughts(total) && string.CompareOrdinal(piece, total) <= 0;
    }

    private static bool NotAllNoughts(string digits) => digits.Any(c => c != '0');

    private static bool PlaceHolds(string part)
    {
        var halves = part.Split('/');
        return halves.Length == 2 && halves.All(h => h.Length > 0 && h.All(char.IsAsciiDigit) && h[0] != '0')
            && (halves[0].Length < halves[1].Length || (halves[0].Length == halves[1].Length && string.CompareOrdinal(halves[0], halves[1]) <= 0));
    }
}
