namespace Evengrist.Laboratory.Watch;

/// <summary>How many times better than "nothing moved" the pairs have to fit a move before there is a verdict, by how long the move has held. Model: docs/model/meter-or-wheat.md.</summary>
/// <remarks>Every look for a move risks a false alarm. What may be risked in a hundred pairs is spent where a move of the size sought is due to be found, at its eighth pair; younger moves and older ones, of which there are many, have to show far more.</remarks>
public static class AskedFit
{
    /// <summary>A move of the size sought is due to be found when it has held so many pairs.</summary>
    public const int Due = 8;

    /// <summary>Asked of a move that has held so many pairs; tuned on simulated pairs.</summary>
    public const double WhenDue = 350;

    /// <summary>Asked of one that has held fewer or more.</summary>
    public const double Else = 50_000;

    /// <summary>Asked of one that began among the first pairs of a watch: a bias just set, or an instrument just put to use, is off more often, and there are few such starts.</summary>
    public const double AtFirst = 3_000;

    /// <summary>How many pairs are the first of a watch.</summary>
    public const int FirstPairs = 6;

    /// <summary>So many times as much is asked where the deviations gone by are learnt from pairs, not known.</summary>
    public const double LearntTimes = 2;

    /// <summary>What is asked of an instrument's step; a rival half as likely beforehand has to fit twice as well.</summary>
    /// <param name="after">How many pairs came before it, 0 or more.</param>
    /// <param name="held">How many pairs it has held, 1 or more.</param>
    public static double Of(int after, int held) => held == Due ? WhenDue : after < FirstPairs ? AtFirst : Else;
}
