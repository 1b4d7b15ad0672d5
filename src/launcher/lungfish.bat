@echo off
rem Starts Lungfish from any folder. The jar lies beside this file; the settings of the Java machine are in lungfish.jvm.
rem The first window writes lungfish.jsa, the classes made ready, when it is closed, and the first plan in a terminal
rem lungfish-plan.jsa; later starts are faster.
setlocal
set "here=%~dp0"
set "java=java"
if defined JAVA_HOME set "java=%JAVA_HOME%\bin\java"
set "ready=%here%lungfish.jsa"
set "plans=%here%lungfish-plan.jsa"
set "quick="
set "writes="

rem What is over within a second is compiled once, not twice.
for %%c in (plan check blowers demos schema help) do if "%~1"=="%%c" set "quick=-XX:TieredStopAtLevel=1"
if "%~1"=="" set "writes=yes"
if "%~1"=="plan" if not "%~2"=="" if "%~3"=="" set "writes=yes"
if defined quick if exist "%plans%" set "ready=%plans%"
if "%~1"=="plan" if defined writes set "ready=%plans%"
set "fresh=%ready%.%RANDOM%"

if exist "%ready%" (
    "%java%" "@%here%lungfish.jvm" %quick% "-XX:SharedArchiveFile=%ready%" -jar "%here%lungfish.jar" %*
    exit /b
)
if not defined writes (
    "%java%" "@%here%lungfish.jvm" %quick% -jar "%here%lungfish.jar" %*
    exit /b
)
"%java%" "@%here%lungfish.jvm" %quick% "-XX:ArchiveClassesAtExit=%fresh%" -jar "%here%lungfish.jar" %*
set "code=%ERRORLEVEL%"
if not exist "%fresh%" exit /b %code%
if %code% lss 2 (move /y "%fresh%" "%ready%" >nul) else del "%fresh%"
exit /b %code%
