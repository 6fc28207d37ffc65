using Seasonwright.Cli;

return CommandLine.Run(args, Terminal.OfThisProcess(), TimeProvider.System);
