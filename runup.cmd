@echo off
rem Builds Runup when the program is not there yet, then runs it. Delete artifacts\program to build again.
setlocal
set "root=%~dp0"
set "program=%root%artifacts\program"
if not exist "%program%\runup.exe" (
  where dotnet >nul 2>nul || (echo runup: the .NET 10 SDK is not on PATH; install it, then call runup again 1>&2 & exit /b 2)
  echo runup: building ^(about a minute the first time^) 1>&2
  dotnet publish "%root%src\Runup.Cli" --configuration Release --runtime win-x64 --self-contained false -p:PublishReadyToRun=true -p:RunAnalyzers=false --output "%program%" --nologo --verbosity quiet 1>&2 || exit /b 2
)
"%program%\runup.exe" %*
exit /b %errorlevel%
