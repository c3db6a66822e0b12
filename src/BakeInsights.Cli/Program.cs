using BakeInsights.Cli;
using Spectre.Console.Cli;

// Taken at the start: while a notebook's cell runs, and one that was stopped may run on, the console is the cell's.
var errors = Console.Error;
using var stop = new CancellationTokenSource();
Console.CancelKeyPress += (_, pressed) =>
{
    pressed.Cancel = true;
    stop.Cancel();
};

var app = new CommandApp();
app.Configure(command =>
{
    command.SetApplicationName("bakeinsights");
    command.UseStrictParsing();
    command.SetInterceptor(new MissingValue());
    command.SetExceptionHandler((error, _) => CommandFailure.Report(error, errors));
    command.AddCommand<RunCommand>("run")
        .WithDescription("Run a notebook and write its page.")
        .WithExample("run", "notebooks/review-a-month.ipynb", "--journal", "data-demo/school", "--to", "month.html");
});
return await app.RunAsync(args, stop.Token);
