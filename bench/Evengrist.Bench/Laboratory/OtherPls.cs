using System.Diagnostics;
using System.Globalization;
using Evengrist.Laboratory.Calibration;

namespace Evengrist.Bench.Laboratory;

/// <summary>R's package pls, run on the same numbers: the fastest of its three algorithms that take one property.</summary>
/// <param name="Coefficients">With each number of factors: intercept, then every channel.</param>
/// <param name="Calibration">RMSEC with 0, 1, 2 … factors.</param>
/// <param name="Tens">RMSECV, ten segments in turn.</param>
/// <param name="Ones">RMSECV, one left out at a time.</param>
/// <param name="TensMilliseconds">Time of the first.</param>
/// <param name="OnesMilliseconds">Time of the second.</param>
internal sealed record OtherPls(double[][] Coefficients, double[] Calibration, double[] Tens, double[] Ones, double TensMilliseconds, double OnesMilliseconds)
{
    private const string Script = """
        suppressMessages(library(pls))
        a <- commandArgs(TRUE); folder <- a[1]; n <- as.integer(a[2]); A <- as.integer(a[3])
        X <- matrix(scan(file.path(folder, "x"), quiet = TRUE), nrow = n, byrow = TRUE)
        d <- data.frame(y = scan(file.path(folder, "y"), quiet = TRUE)); d$X <- X
        segments <- split(seq_len(n), (seq_len(n) - 1) %% 10)
        timed <- function(f) { best <- Inf; began <- proc.time()[3]; runs <- 0
          while (runs < 2 || (runs < 20 && proc.time()[3] - began < 2)) { t <- system.time(f(), gcFirst = FALSE)[3]; best <- min(best, t); runs <- runs + 1 }; best }
        tens <- function(m) plsr(y ~ X, ncomp = A, data = d, method = m, validation = "CV", segments = segments)
        ones <- function(m) plsr(y ~ X, ncomp = A, data = d, method = m, validation = "LOO")
        methods <- c("kernelpls", "simpls", "widekernelpls")
        t10 <- sapply(methods, function(m) timed(function() tens(m))); t1 <- sapply(methods, function(m) timed(function() ones(m)))
        m <- tens("kernelpls"); l <- ones("kernelpls")
        line <- function(v) cat(sprintf("%.17g", v), "\n")
        for (k in 1:A) line(coef(m, ncomp = k, intercept = TRUE)[, 1, 1])
        line(RMSEP(m, "train")$val[1, 1, ]); line(RMSEP(m, "CV")$val[1, 1, ]); line(RMSEP(l, "CV")$val[1, 1, ]); line(1000 * c(min(t10), min(t1)))
        """;

    public static bool IsHere => Ask("-e", "library(pls)").Status == 0;

    public static string Version() => Ask("-e", "cat(R.version.string, 'pls', as.character(packageVersion('pls')))").Output;

    public static OtherPls Run(CalibrationSpec spec)
    {
        var folder = Directory.CreateTempSubdirectory("evengrist-pls-").FullName;
        try
        {
            File.WriteAllText(Path.Combine(folder, "run.R"), Script);
            File.WriteAllLines(Path.Combine(folder, "x"), spec.Samples.Select(s => string.Join(' ', s.Spectrum.Select(Written))));
            File.WriteAllLines(Path.Combine(folder, "y"), spec.Samples.Select(s => Written(s.Reference)));
            var (status, output) = Ask(Path.Combine(folder, "run.R"), folder, Written(spec.Samples.Count), Written(spec.MostFactors));
            double[][] lines = status == 0 ? [.. output.Split('\n').Where(l => l.Trim().Length > 0).Select(l => l.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(w => double.Parse(w, CultureInfo.InvariantCulture)).ToArray())]
                : throw new InvalidOperationException("R did not answer.");
            return new(lines[..^4], lines[^4], lines[^3], lines[^2], lines[^1][0], lines[^1][1]);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static (int Status, string Output) Ask(params string[] arguments)
    {
        try
        {
            using var run = Process.Start(new ProcessStartInfo("Rscript", arguments) { RedirectStandardOutput = true, RedirectStandardError = true })!;
            var error = run.StandardError.ReadToEndAsync();
            var output = run.StandardOutput.ReadToEnd();
            run.WaitForExit();
            return (run.ExitCode, error.IsFaulted ? "" : output);
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return (-1, "");
        }
    }

    private static string Written(double number) => number.ToString("R", CultureInfo.InvariantCulture);
}
