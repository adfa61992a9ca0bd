using System.Collections.Frozen;

namespace Evengrist.Plant.Gs1.Checks;

/// <summary>Currencies by their numbers (ISO 4217), as GS1's reference test held them in July 2026.</summary>
internal static class Currencies
{
    private static readonly FrozenSet<string> Numbers = NumberList.Of(
        """
        008 012 032 036 044 048 050-052 060 064 068 072 084 090 096 104 108 116 124 132 136 144 152 156 170 174 188 191 192 203 208 214 222 230 232 238 242
        262 270 292 320 324 328 332 340 344 348 352 356 360 364 368 376 388 392 398 400 404 408 410 414 417 418 422 426 430 434 446 454 458 462 480 484 496 498 504
        512 516 524 532 533 548 554 558 566 578 586 590 598 600 604 608 634 643 646 654 682 690 694 702 704 706 710 728 748 752 756 760 764 776 780 784 788
        800 807 818 826 834 840 858 860 882 886 901 924 925 927-934 936 938 940 941 943 944 946-953 955-965 967-973 975-981 984-986 990 994 997 999
        """);

    public static bool IsNumber(string part) => Numbers.Contains(part);
}
