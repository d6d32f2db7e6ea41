@echo off
rem Runs Trammel on Windows from an installed copy: bin, lib, plugins and catalogs side by side.
rem
rem   JAVA_HOME   the Java to use, unless the copy has its own in runtime; without it, the java on the PATH
rem
rem It ends with what Trammel says: 0, 1, 2 or 3. Whatever else ends Java is 3.
setlocal EnableExtensions DisableDelayedExpansion
set "TRAMMEL_HOME=%~dp0.."
set "TRAMMEL_JAVA=java"
if defined JAVA_HOME set "TRAMMEL_JAVA=%JAVA_HOME%\bin\java.exe"
if exist "%TRAMMEL_HOME%\runtime\bin\java.exe" set "TRAMMEL_JAVA=%TRAMMEL_HOME%\runtime\bin\java.exe"
if not exist "%TRAMMEL_HOME%\lib\trammel-app.jar" (
  echo This copy of Trammel is not whole: lib\trammel-app.jar is missing. Unpack the zip again. 1>&2
  exit /b 3
)
"%TRAMMEL_JAVA%" --version >nul 2>&1
if errorlevel 1 (
  echo Trammel needs Java 17 or newer and found none: install it, or set JAVA_HOME to its folder. 1>&2
  exit /b 3
)
"%TRAMMEL_JAVA%" -Dfile.encoding=UTF-8 -Djava.awt.headless=true ^
  -Dslf4j.provider=org.slf4j.nop.NOPServiceProvider -Dslf4j.internal.verbosity=ERROR ^
  -Dtrammel.launcher=unwatched -Dtrammel.home="%TRAMMEL_HOME%" ^
  -jar "%TRAMMEL_HOME%\lib\trammel-app.jar" %*
set "TRAMMEL_STATUS=%ERRORLEVEL%"
if "%TRAMMEL_STATUS%"=="100" exit /b 0
if "%TRAMMEL_STATUS%"=="101" exit /b 1
if "%TRAMMEL_STATUS%"=="102" exit /b 2
if "%TRAMMEL_STATUS%"=="103" exit /b 3
echo Java ended with status %TRAMMEL_STATUS% before Trammel was done: no result of this run can be trusted. 1>&2
exit /b 3
