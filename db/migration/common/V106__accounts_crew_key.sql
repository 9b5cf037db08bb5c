-- What the crew shows at the door is signed with it, so that it can be checked there without a look at the database.
create table crew_key (
  id int primary key,
  secret varchar(64) not null,
  made_at timestamp(3) with time zone not null
);
