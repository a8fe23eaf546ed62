# Rscript run.R [iterations], in this folder: reads notes.csv and curve.csv, samples model.jags and prints
# the posterior as CSV. Needs R and the packages rjags and coda (Debian: jags, r-cran-rjags).
# posterior.csv was made by it with JAGS 4.3.1, rjags 4-13 and R 4.2.2.
suppressMessages(library(rjags))
given <- commandArgs(trailingOnly = TRUE)
iterations <- if (length(given) > 0) as.integer(given[1]) else 100000
notes <- read.csv("notes.csv")
curve <- read.csv("curve.csv")$emerged
names <- unique(notes$cup)
stages <- c("larvae", "pupae", "adults")
limits <- array(0, c(length(names), 3, 2))
for (i in seq_along(names)) for (k in 1:3) {
  mine <- notes[notes$cup == names[i], ]
  limits[i, k, 1] <- max(-1000, mine$age_days[which(mine[[stages[k]]] == 0)])
  limits[i, k, 2] <- min(1000, mine$age_days[which(mine[[stages[k]]] == 1)])
}
counted <- notes[!is.na(notes$count), ]
lastDay <- as.vector(tapply(notes$age_days, notes$cup, max)) + 1
middle <- (limits[, , 1] + limits[, , 2]) / 2
data <- list(cups = length(names), days = max(lastDay), lastDay = lastDay, survival = 0.92,
  nominal = c(2.5, 8, 13), eye = c(0.8, 0.7, 0.6), limits = limits, seen = matrix(1, length(names), 3),
  ages = seq_along(curve) - 1, cumulative = cumsum(curve), settingWeight = exp(-0.5 * (-2:2)^2),
  counts = nrow(counted), cupOf = match(counted$cup, names), dayOf = counted$age_days + 1,
  logCount = log(counted$count + 1))
start <- pmin(pmax(middle, limits[, , 1] + 0.5), limits[, , 2] - 0.5)
start[limits[, , 1] < -900] <- (limits[, , 2] - 0.7)[limits[, , 1] < -900]
inits <- lapply(1:4, function(chain) list(first = start, .RNG.name = "base::Mersenne-Twister", .RNG.seed = chain))
fit <- jags.model("model.jags", data, inits, n.chains = 4, n.adapt = 4000, quiet = TRUE)
update(fit, 10000, progress.bar = "none")
draws <- coda.samples(fit, c("alpha", "beta", "su", "x", "y", "now"), iterations, thin = 10, progress.bar = "none")
all <- as.matrix(draws)
effective <- coda::effectiveSize(draws)
cat("quantity,mean,sd,q05,q95,effective\n")
for (name in colnames(all)) {
  v <- all[, name]
  cat(sprintf("%s,%.5f,%.5f,%.5f,%.5f,%.0f\n", name, mean(v), sd(v), quantile(v, .05), quantile(v, .95), effective[name]))
}
