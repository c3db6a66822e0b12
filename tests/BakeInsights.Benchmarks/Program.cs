using System.Globalization;
using BakeInsights.Benchmarks;
using BenchmarkDotNet.Running;

// Two words are for journal-speed.sh, which times whole processes; all else is BenchmarkDotNet's.
switch (args)
{
    case ["journal", var path, var bakes]:
        LongJournal.Write(path, int.Parse(bakes, CultureInfo.InvariantCulture));
        break;
    case ["bare-parse", var path]:
        Console.WriteLine(BareParse.Of(path).ToString(CultureInfo.InvariantCulture));
        break;
    default:
        BenchmarkSwitcher.FromAssembly(typeof(LongJournal).Assembly).Run(args);
        break;
}
