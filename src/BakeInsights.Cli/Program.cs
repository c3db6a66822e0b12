using BakeInsights.Cli;
using Spectre.Console.Cli;

// Taken at the start: while a notebook's cell runs, and one that was stopped may run on, the console is the cell's.
var errors = Console.Error;
using var stop = new CancellationTokenSource();
Console.CancelKeyPress += (_, pressed) =>
{
    // The first time in order; whoever presses again does not want to wait.
    pressed.Cancel = !stop.IsCancellationRequested;
    stop.Cancel();
};

var app = new CommandApp();
app.Configure(command =>
{
    command.SetApplicationName("bakeinsights");
    command.UseStrictParsing();
    command.SetInterceptor(new MissingValue());
    command.SetExceptionHandler((error, _) => CommandFailure.Report(error, errors));
    command.AddCommand<CheckCommand>("check")
        .WithDescription("Say what was read of a journal, what was set aside, and why.")
        .WithExample("check", "data-demo/millpond-lane");
    command.AddCommand<FitCommand>("fit")
        .WithDescription("Fit rise time and loaf volume, and say what moved them.")
        .WithExample("fit", "data-demo/millpond-lane", "--units", "us");
    command.AddCommand<TuneCommand>("tune")
        .WithDescription("Find the formula that meets your wishes, with its chance.")
        .WithExample("tune", "data-demo/millpond-lane", "--ready-within", "\"90 min\"", "--volume-at-least", "4.2", "--hydration", "62-70")
        .WithExample("tune", "data-demo/millpond-lane", "--ready-by", "14:30", "--mixed-at", "13:00", "--kitchen", "19C");
    command.AddCommand<NextCommand>("next")
        .WithDescription("Say what to bake next to learn most, and what to expect of it.")
        .WithExample("next", "data-demo/millpond-lane", "--bakes", "4")
        .WithExample("next", "data-demo/millpond-lane", "--question", "rise_by_yeast", "--until", "2");
    command.AddCommand<PlanCommand>("plan")
        .WithDescription("Plan a class's bakes, bench by bench.")
        .WithExample("plan", "data-demo/osier-yard", "--vary", "hydration=64,70", "--vary", "dough_temp=22,26", "--difference", "10");
    command.AddCommand<CompareCommand>("compare")
        .WithDescription("Set two formulas, or two ways of working, side by side.")
        .WithExample("compare", "data-demo/osier-yard", "--by", "flour_measure", "--this", "weighed", "--that", "spooned");
    command.AddCommand<AddCommand>("add")
        .WithDescription("Add one more bake to a journal: asked for and checked.")
        .WithExample("add", "my-journal", "--units", "us")
        .WithExample("add", "my-journal", "--set", "baked_on=2026-10-31", "--set", "dough_temp=76F");
    command.AddCommand<NewCommand>("new")
        .WithDescription("Start a journal.")
        .WithExample("new", "my-journal");
    command.AddCommand<SheetCommand>("sheet")
        .WithDescription("Write bake sheets to print, with the day's timetable.")
        .WithExample("sheet", "data-demo/millpond-lane", "--start", "9:00", "--finish-by", "14:30", "--to", "sheet.html")
        .WithExample("sheet", "my-journal", "--units", "us", "--bake", "bench A: dough_temp=76F, yeast=0.8");
    command.AddCommand<RunCommand>("run")
        .WithDescription("Run a notebook and write its page.")
        .WithExample("run", "notebooks/review-a-month.ipynb", "--journal", "data-demo/millpond-lane", "--to", "month.html");
});
return await app.RunAsync(args, stop.Token);
