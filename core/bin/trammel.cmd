@echo off
rem Runs Trammel on Windows from an installed copy: bin, lib, plugins and catalogs side by side.
rem
rem   JAVA_HOME   the Java to use, unless the copy has its own in runtime; without it, the java on the PATH
rem
rem It ends with what Trammel says: 0, 1, 2 or 3. Whatever else ends Java is 3.
rem Names of folders may hold blanks, letters of any kind and the signs & ! %% ( ) ^ ' ; , and =.
setlocal EnableExtensions DisableDelayedExpansion
for %%H in ("%~dp0..") do set "TRAMMEL_HOME=%%~fH"
if not exist "%TRAMMEL_HOME%\lib\trammel-app.jar" goto not_whole

if exist "%TRAMMEL_HOME%\runtime\bin\java.exe" goto own_java
if defined JAVA_HOME goto java_of_home
set "TRAMMEL_JAVA="
for %%J in (java.exe) do set "TRAMMEL_JAVA=%%~$PATH:J"
if not defined TRAMMEL_JAVA goto no_java
for %%J in ("%TRAMMEL_JAVA%") do set "TRAMMEL_JDK=%%~dpJ.."
goto version

:own_java
set "TRAMMEL_JDK=%TRAMMEL_HOME%\runtime"
set "TRAMMEL_JAVA=%TRAMMEL_JDK%\bin\java.exe"
goto run

:java_of_home
rem Quotation marks in it are taken off: they are about the whole of it, and it stands in the midst of a name here.
set "TRAMMEL_JDK=%JAVA_HOME:"=%"
set "TRAMMEL_JAVA=%TRAMMEL_JDK%\bin\java.exe"
if not exist "%TRAMMEL_JAVA%" goto wrong_home

:version
rem Told by the file release, which most have. A Java without it is asked once it has failed.
set "TRAMMEL_VERSION="
if not exist "%TRAMMEL_JDK%\release" goto run
for /f "usebackq tokens=1* delims==" %%A in ("%TRAMMEL_JDK%\release") do if "%%A"=="JAVA_VERSION" set "TRAMMEL_VERSION=%%~B"
if not defined TRAMMEL_VERSION goto run
for /f "delims=." %%A in ("%TRAMMEL_VERSION%") do if %%A LSS 17 goto too_old

:run
"%TRAMMEL_JAVA%" -Dfile.encoding=UTF-8 -Djava.awt.headless=true ^
  -Dslf4j.provider=org.slf4j.nop.NOPServiceProvider -Dslf4j.internal.verbosity=ERROR ^
  -Dtrammel.launcher=unwatched -Dtrammel.home="%TRAMMEL_HOME%" ^
  -jar "%TRAMMEL_HOME%\lib\trammel-app.jar" %*
set "TRAMMEL_STATUS=%ERRORLEVEL%"
if "%TRAMMEL_STATUS%"=="100" exit /b 0
if "%TRAMMEL_STATUS%"=="101" exit /b 1
if "%TRAMMEL_STATUS%"=="102" exit /b 2
if "%TRAMMEL_STATUS%"=="103" exit /b 3
>&2 echo Java ended with status %TRAMMEL_STATUS% before Trammel was done: no result of this run can be trusted.
>&2 echo If Java said why, it stands above. Trammel needs Java 17 or newer; this one says of itself:
>&2 "%TRAMMEL_JAVA%" -version
exit /b 3

:not_whole
>&2 echo This copy of Trammel is not whole: "%TRAMMEL_HOME%\lib\trammel-app.jar" is missing. Unpack the zip again.
exit /b 3

:no_java
>&2 echo Trammel needs Java 17 or newer and there is none: install it, or set JAVA_HOME to its folder.
exit /b 3

:wrong_home
>&2 echo JAVA_HOME is "%TRAMMEL_JDK%", but there is no bin\java.exe in it: set it to the folder of a Java 17 or newer, or unset it.
exit /b 3

:too_old
>&2 echo Trammel needs Java 17 or newer, but "%TRAMMEL_JAVA%" is Java %TRAMMEL_VERSION%: install Java 17 or newer, or set JAVA_HOME to its folder.
exit /b 3
