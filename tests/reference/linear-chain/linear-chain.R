# The linear chain that the engine's stage tables stand for, written out: 200 sub-stages from egg to
# emergence as ordinary differential equations, founders that lay and die, crowding and food.
# Solver: deSolve's lsoda (adaptive, rtol 1e-8), the model in R, not compiled.
# Run:  Rscript linear-chain.R parameters.csv emergence.csv
# Writes the flies that emerge on each day, by case, and the seconds that each case took.
library(deSolve)
args <- commandArgs(trailingOnly = TRUE)
table <- read.csv(args[1])
p <- as.list(setNames(table$value, table$name))
kE <- p$eggSubstages; kL <- p$larvaSubstages; kP <- p$pupaSubstages; k <- kE + kL + kP
isLarva <- (kE + 1):(kE + kL)
larvalShare <- kL / k
progress <- (seq_len(kL) - 0.5) / kL
rate <- function(t) ifelse(t <= p$briereLowerC | t >= p$briereUpperC, 0,
  p$briereA * t * (t - p$briereLowerC) * (p$briereUpperC - t)^(1 / p$briereM))

model <- function(time, y, case) {
  stages <- y[1:k]; founders <- y[k + 1]; food <- y[k + 2]
  r <- rate(case$temperature(time))
  larvae <- stages[isLarva]
  load <- 3 * sum(larvae * progress^2)
  if (case$crowded) {
    left <- max(food, 0) / p$food
    fed <- (1 + p$scarceFood) * left / (left + p$scarceFood)
    crowding <- load / (p$capacity * max(0.01, fed))
    speed <- 1 / (1 + p$delay * log1p(crowding))
    deaths <- p$baseDeaths + p$crowdedDeaths * crowding
    size <- max(0.35, 1 / sqrt(1 + crowding / p$massHalf))
  } else {
    fed <- 1; speed <- 1; deaths <- p$baseDeaths; size <- 0
  }
  through <- rep(k * r, k)
  through[isLarva] <- k * r * speed
  out <- through * stages
  laid <- if (time < p$layingUntilDay) p$eggsPerFounderDay * founders * fed else 0
  change <- c(laid, out[-k]) - out
  change[isLarva] <- change[isLarva] - deaths * r * speed / larvalShare * larvae
  list(c(change, -p$founderDeathPerDay * founders, -load * r * speed / larvalShare * size, out[k]))
}

cases <- list(
  list(name = "constant", temperature = function(t) 24, crowded = FALSE),
  list(name = "daily-swing", temperature = function(t) 22 + 4 * sin(2 * pi * t), crowded = FALSE),
  list(name = "crowded", temperature = function(t) 24, crowded = TRUE),
  list(name = "crowded-swing", temperature = function(t) 22 + 4 * sin(2 * pi * t), crowded = TRUE)
)
days <- 35
rows <- NULL
for (case in cases) {
  start <- proc.time()[["elapsed"]]
  y <- c(rep(0, k), p$founders, p$food, 0)
  # The founders' end is a corner: integrate up to it and on from it.
  first <- lsoda(y, 0:p$layingUntilDay, model, case, rtol = 1e-8, atol = 1e-8)
  second <- lsoda(first[nrow(first), -1], p$layingUntilDay:days, model, case, rtol = 1e-8, atol = 1e-8)
  seconds <- proc.time()[["elapsed"]] - start
  emerged <- diff(c(first[, ncol(first)], second[-1, ncol(second)]))
  rows <- rbind(rows, data.frame(case = case$name, day = seq_len(days) - 1, emerged = sprintf("%.6f", emerged),
    seconds = sprintf("%.3f", seconds)))
}
write.csv(rows, args[2], row.names = FALSE, quote = FALSE)
cat(R.version.string, "deSolve", as.character(packageVersion("deSolve")), "\n")
