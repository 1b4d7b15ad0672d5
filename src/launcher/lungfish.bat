@echo off
rem Starts Lungfish from any folder. The jar lies beside this file; the settings of the Java machine are in lungfish.jvm.
rem The first window writes lungfish.jsa, the classes made ready, when it is closed; later ones start faster.
setlocal
set "here=%~dp0"
set "java=java"
if defined JAVA_HOME set "java=%JAVA_HOME%\bin\java"
set "ready=%here%lungfish.jsa"
set "fresh=%ready%.%RANDOM%"

if exist "%ready%" (
    "%java%" "@%here%lungfish.jvm" "-XX:SharedArchiveFile=%ready%" -jar "%here%lungfish.jar" %*
    exit /b
)
if not "%~1"=="" (
    "%java%" "@%here%lungfish.jvm" -jar "%here%lungfish.jar" %*
    exit /b
)
"%java%" "@%here%lungfish.jvm" "-XX:ArchiveClassesAtExit=%fresh%" -jar "%here%lungfish.jar"
set "code=%ERRORLEVEL%"
if exist "%fresh%" move /y "%fresh%" "%ready%" >nul
exit /b %code%
