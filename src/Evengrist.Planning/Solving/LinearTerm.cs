using System.Runtime.InteropServices;

namespace Evengrist.Planning.Solving;

/// <summary>One coefficient of a problem.</summary>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct LinearTerm(int Row, int Column, double Coefficient);
