using Watersown.Cli;

return await Desk.RunAsync(args, new Edge(Console.Out, Console.Error, Console.In, TimeProvider.System));
