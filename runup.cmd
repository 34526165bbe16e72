@echo off
rem Builds Runup when the program is not there yet, then runs it. Delete artifacts\program to build again.
rem   publish [DIR [RUNTIME...]]   folders to hand out, each with all that the program needs; no .NET is needed where it runs.
rem                                DIR: artifacts\publish where none is named; RUNTIME: win-x64, linux-x64, linux-arm64
setlocal
set "root=%~dp0"
set "program=%root%artifacts\program"
if /i "%~1"=="publish" goto publish
if not exist "%program%\runup.exe" (
  call :sdk || exit /b 2
  echo runup: building ^(about a minute the first time^) 1>&2
  dotnet publish "%root%src\Runup.Cli" --configuration Release --runtime win-x64 --self-contained false -p:PublishReadyToRun=true -p:RunAnalyzers=false --output "%program%" --nologo --verbosity quiet 1>&2 || exit /b 2
)
"%program%\runup.exe" %*
exit /b %errorlevel%

:sdk
where dotnet >nul 2>nul || (echo runup: the .NET 10 SDK is not on PATH; install it, then call runup again 1>&2 & exit /b 2)
exit /b 0

:publish
call :sdk || exit /b 2
set "folder=%~2"
if "%folder%"=="" set "folder=%root%artifacts\publish"
set "runtimes=%~3 %~4 %~5"
if "%~3"=="" set "runtimes=win-x64 linux-x64 linux-arm64"
for %%r in (%runtimes%) do (
  call :free %%r "%~2" || exit /b 2
)
for %%r in (%runtimes%) do (
  call :one %%r || exit /b 2
)
exit /b 0

:free
if not "%1"=="win-x64" if not "%1"=="linux-x64" if not "%1"=="linux-arm64" (
  echo runup: there is no runtime '%1' to publish for; win-x64, linux-x64 or linux-arm64 would do 1>&2
  exit /b 2
)
if "%~2"=="" exit /b 0
if not exist "%folder%\%1" exit /b 0
echo runup: "%folder%\%1" is there already and is left as it is; another folder would do 1>&2
exit /b 2

:one
echo runup: %1 1>&2
set "part=%folder%\%1.part"
if exist "%part%" rmdir /s /q "%part%"
dotnet publish "%root%src\Runup.Cli" --configuration Release --runtime %1 --self-contained true -p:PublishReadyToRun=true -p:RunAnalyzers=false --output "%part%" --nologo --verbosity quiet 1>&2
if errorlevel 1 (
  if exist "%part%" rmdir /s /q "%part%"
  echo runup: %1 was not made; where NU1101 or NU1301 stands above, its .NET runtime can't be fetched: with a network, call it once more 1>&2
  exit /b 2
)
del /q "%part%\*.pdb" "%part%\runup*.xml" "%part%\*.DiaSymReader.*" "%part%\createdump*" >nul 2>nul
copy /y "%root%docs\handed-out.txt" "%part%\README.txt" >nul || exit /b 2
copy /y "%root%LICENSE" "%part%\LICENSE.txt" >nul || exit /b 2
if exist "%folder%\%1" rmdir /s /q "%folder%\%1"
move "%part%" "%folder%\%1" >nul || exit /b 2
echo %folder%\%1
exit /b 0
